import type { EarReplay, Step } from './case.ts';
import { heard, replays, touched } from './replays.ts';

/** The guitar and the repair are those of the full replay. */
function alsoReplayed(id: string, steps: readonly Step[], note: string): EarReplay {
  const full = replays.find((replay) => replay.id === id);
  if (!full) throw new RangeError(`${id} is not replayed in full`);
  return { id, wiring: full.wiring, heard: steps, resolved: full.resolved, note };
}

/**
 * Cases whose symptom says how the guitar sounds, in which place of its controls. A symptom in two words is put as the first of them;
 * a place that the symptom does not tell of is left out.
 */
export const byEar: readonly EarReplay[] = [
  alsoReplayed(
    'K01',
    [heard('1', 'normal'), heard('3', 'weak'), heard('5', 'normal')],
    'weak and thin is put as weak',
  ),
  alsoReplayed('K03', [heard('5', 'silent')], 'as it was at the end'),
  alsoReplayed(
    'K07',
    [{ ask: { kind: 'listen' }, plug: 'in', seen: { kind: 'listen', heard: 'weak' } }],
    'what the tone does is left out: the wiring that stands for it has none',
  ),
  alsoReplayed('K11', [heard('neck', 'dull')], 'dark and soft is put as dull'),
  alsoReplayed('K15', [heard('bridge', 'silent')], ''),
  alsoReplayed('K17', [heard('neck', 'silent')], ''),
  alsoReplayed('K19', [heard('bridge', 'silent')], ''),
  {
    id: 'K25',
    wiring: 'two-singles-three-position',
    heard: [heard('bridge', 'silent')],
    resolved: ['coil:bridgeCoil'],
    note: 'the rest of the guitar is not told: two single coils here',
  },
  alsoReplayed(
    'K27',
    [heard('bridge', 'silent'), heard('both', 'normal'), heard('neck', 'normal')],
    '',
  ),
  alsoReplayed('K31', [heard('bridge', 'silent'), heard('neck', 'normal')], ''),
  {
    id: 'K41',
    wiring: 'one-single-two-knobs',
    heard: [
      {
        ask: { kind: 'listen' },
        plug: 'in',
        knobs: { tone: 0 },
        seen: { kind: 'listen', heard: 'silent' },
      },
    ],
    resolved: ['coil:bridgeCoil'],
    note: 'a rule of a teaching page; how it sounds full up is not told',
  },
  alsoReplayed('K47', [heard('both', 'hum'), touched('strings.metal', 'same')], ''),
  alsoReplayed(
    'K49',
    [touched('controlPlate.metal', 'down'), touched('strings.metal', 'same')],
    '',
  ),
  {
    id: 'K53',
    wiring: 'two-humbuckers-four-knobs',
    heard: [heard('both', 'hum')],
    resolved: ['remake:jackGround'],
    note: 'buzz without sound is put as hum, in the position where the lever rests',
  },
  alsoReplayed('K57', [heard('2', 'thin')], ''),
  alsoReplayed(
    'K59',
    [
      heard('1', 'normal'),
      heard('2', 'weak'),
      heard('3', 'normal'),
      heard('4', 'weak'),
      heard('5', 'normal'),
    ],
    '',
  ),
];
