import { area } from '../area.ts';

const bench = {
  rOnPointBOnPoint2: (point: string, point2: string) => `R on ${point}, B on ${point2}`,
  asGoodAsCertain: 'As good as certain',
  veryLikely: 'Very likely',
  likely: 'Likely',
  moreLikelyThanTheRest: 'More likely than the rest',
  atTheJack: 'at the jack',
  humAHandOnPoint: (point: string) => `hum, a hand on ${point}`,
  humAgainst: (other: string) => `hum, against ${other}`,
  theMagnetOfSite: (site: string) => `the magnet of ${site}`,
  titleAtKnobs: (title: string, knobs: number) => `${title} at ${knobs}`,
  positionSelected: (position: string) => `${position} selected`,
  takenBackWhatYouHeard: 'Taken back: what you heard.',
  takenBackSeen: (seen: string) => `Taken back: ${seen}.`,
  takenBackCantReachIt: 'Taken back: "can’t reach it".',
  takenBackRepair: (repair: string) => `Taken back: ${repair}.`,
  backAtTheCautions: 'Back at the cautions.',
  theJobIsOpenAgain: 'The job is open again.',
  normalForAKnobTurnedDown: 'normal for a knob turned down',
  smoothHighestBandOf: (bandOf: string) => `smooth, highest ${bandOf}`,
  belowHigh: (high: string) => `below ${high}`,
  fromTo: (low: string, high: string) => `${low} to ${high}`,
  under1Percent: 'under 1\u00a0%',
  over99Percent: 'over 99\u00a0%',
  atMost: (how: string, peak: string) => `${how}, at most ${peak}`,
  look: { good: 'good', dull: 'dull', loose: 'loose', burnt: 'burnt', bridged: 'bridged' },
  flex: { steady: 'steady', jumps: 'jumps' },
  hum: { up: 'hum louder', down: 'hum softer', same: 'hum the same' },
  pole: { north: 'north', south: 'south', none: 'no pull' },
  sound: 'sound',
  pointToPoint: (red: string, black: string) => `${red} to ${black}`,
  /** A kind of reading, and where. */
  beepAt: (place: string) => `beep, ${place}`,
  capacitanceAt: (place: string) => `capacitance, ${place}`,
  turningAt: (pot: string, place: string) => `turning ${pot}, ${place}`,
  tapAt: (coil: string, place: string) => `tap on ${coil}, ${place}`,
  movingAt: (site: string, place: string) => `moving ${site}, ${place}`,
  /** A place of a reading in fewer words, for a line of a list. */
  shortPlace: (place: string) =>
    place
      .replaceAll(/the (tip|sleeve) lug of the output jack/g, 'the jack’s $1')
      .replace(/^moving everywhere, /, 'all wires moved, '),
  stage: { open: 'In the guitar, back open', mat: 'Harness on the mat', closed: 'Closed' },
  minutes: (count: number) => (count === 1 ? '1 minute' : `${count} minutes`),
};
export const benchWords = area('bench', bench);
