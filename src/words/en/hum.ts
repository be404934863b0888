import { area } from '../area.ts';

const hum = {
  measureTheHum: 'Measure the hum',
  notNeeded:
    'Not needed, and often a help: the phone tells how much softer the hum is in one position than in another.',
  putItDown: 'Plug the guitar in and set the phone down near the loudspeaker.',
  keepStill:
    'One hand on the strings, knobs at 10 unless a row says otherwise. Move neither guitar nor phone nor the volume of the amplifier.',
  caution:
    'Low volume. The amplifier is only played, never opened. A line input takes the signal of a headphone or line socket, never that of a loudspeaker.',
  nothingKept:
    'The microphone opens only when you touch the button. No sound is recorded, and nothing leaves the phone; only the figures you take over are kept.',
  mains: 'Mains of your country',
  findOut: 'find out',
  hertz: (hertz: number) => `${hertz}\u00a0Hz`,
  input: 'Input',
  openTheMicrophone: 'Open the microphone',
  closeTheMicrophone: 'Close the microphone',
  hum: 'Hum',
  humAt: (hertz: string) => `Hum, ${hertz}\u00a0Hz`,
  noHumHeard: 'No hum is heard over the room. Turn the amplifier up a little, or be quieter.',
  tooLoud: 'Too loud for the microphone. Turn the amplifier down, then measure again.',
  uneven:
    'This phone makes loud and soft alike by itself, so its figures cannot be compared. A line input may do.',
  measure: 'Measure',
  measureAgain: 'Again',
  measuring: 'Hold still …',
  notMeasured: 'not measured',
  loudest: 'loudest',
  atMost: (softer: string) => `${softer}, lost in the room`,
  useTheFigures: 'Take over the figures',
  back: 'Back',
  takenOver: (count: number) =>
    count === 1 ? 'Hum compared in two positions' : `Hum compared in ${count + 1} positions`,
  harmonics: 'Hum and its harmonics',
};
export const humWords = area('hum', hum);
