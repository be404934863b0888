import type { Pot } from '../../parts/part.ts';
import { ohms } from '../../units.ts';
import { pot } from '../build.ts';
import type { Draft } from './draft.ts';
import { type Choice, type Chosen, type Option, optionOf } from './modification.ts';

/** Tracks of the trade (common practice, no source). */
export const tracks: readonly Option[] = [
  { id: '250000', title: '250 kΩ' },
  { id: '300000', title: '300 kΩ' },
  { id: '500000', title: '500 kΩ' },
  { id: '1000000', title: '1 MΩ' },
];

/** What a new knob is made of; the first value is the usual one. */
export function trackChoice(...values: readonly [number, ...number[]]): Choice {
  const options = values.map((value) => ({
    id: String(value),
    title: value < 1e6 ? `${value / 1e3} kΩ` : `${value / 1e6} MΩ`,
  }));
  return { id: 'track', title: 'Track', options: options as [Option, ...Option[]] };
}

/** What the end of the turn does: a no-load pot is out of the circuit there. */
export const endChoice: Choice = {
  id: 'end',
  title: 'At 10',
  options: [
    { id: 'no-load', title: 'off its track (no-load pot)' },
    { id: 'loaded', title: 'the whole track' },
  ],
};

/** Adds a pot whose case is grounded. */
export function addKnob(
  draft: Draft,
  id: string,
  title: string,
  chosen: Chosen,
  track: Choice,
  more: Partial<Pot> = {},
): Pot {
  const made = draft.add<Pot>({
    ...pot(id, title, 'other', 0),
    ohms: { nominal: ohms(Number(optionOf(track, chosen).id)), tolerance: 0.2 },
    ...more,
  });
  draft.join(`${made.id}Case`, `${made.id}.case`, 'jack.sleeve');
  return made;
}
