import type { Setting } from '../circuit/circuit.ts';
import { coilsOf, endOf, type SeenPickup } from '../circuit/seen-pickup.ts';
import { type Seconds, seconds } from '../circuit/units.ts';
import { askKey } from '../diagnosis/ask-key.ts';
import { distinct } from '../diagnosis/repeats.ts';
import type { Ask, Reading } from '../readings/reading.ts';

/** A pickup on the mat has no controls. */
export const ON_THE_MAT: Setting = { positions: {}, knobs: {}, plug: 'out', lifted: [] };

/** Every reading of a pickup on the mat. Those with the probes exchanged are new readings of the same thing. */
export function asksOf(seen: SeenPickup): readonly Ask[] {
  const setting = ON_THE_MAT;
  const ends = seen.leads.map(endOf);
  const coils = coilsOf(seen);
  const metal = [...(seen.plate ? ['plate.metal'] : []), ...(seen.cover ? ['cover.metal'] : [])];
  const asks: Ask[] = [];
  ends.forEach((red, at) => {
    for (const black of ends.slice(at + 1)) {
      asks.push(
        { kind: 'ohms', red, black, setting },
        { kind: 'ohms', red: black, black: red, setting },
      );
      for (const coil of coils)
        asks.push(
          { kind: 'tap', coil, red, black, setting },
          { kind: 'tap', coil, red: black, black: red, setting },
        );
    }
    for (const black of metal)
      asks.push({ kind: 'ohms', red, black, setting }, { kind: 'beep', red, black, setting });
  });
  return asks;
}

const turned = (ask: Ask): Ask =>
  ask.kind === 'ohms' || ask.kind === 'tap' ? { ...ask, red: ask.black, black: ask.red } : ask;

/** How often one tap is asked at most, with the probes either way round. */
const TAPS = 5;

/**
 * Not refused, and not answered yet. Of two asks that differ in which probe is which, the second comes up once the first was
 * answered. A tap may go wrong each time anew: it is offered again, with the probes exchanged.
 */
export function openAsks(
  asks: readonly Ask[],
  readings: readonly Reading[],
  refused: readonly Ask[],
): readonly Ask[] {
  const answered = new Map<string, number>();
  for (const { ask } of readings) answered.set(askKey(ask), (answered.get(askKey(ask)) ?? 0) + 1);
  const given = new Set(refused.flatMap((ask) => [askKey(ask), askKey(turned(ask))]));
  const offered = new Set<string>();
  return asks.filter((ask) => {
    const [key, other] = [askKey(ask), askKey(turned(ask))];
    if (given.has(key) || offered.has(other)) return false;
    const [here, there] = [answered.get(key) ?? 0, answered.get(other) ?? 0];
    const open = ask.kind === 'tap' ? here <= there && here + there < TAPS : here === 0;
    if (open && other !== key) offered.add(key);
    return open;
  });
}

/**
 * Readings that tell leads apart: a figure or beep read again counts once, as it would share a slip of the first; a tap is new each
 * time; the pole of a coil tells nothing of its leads.
 */
export const counted = (readings: readonly Reading[]): readonly Reading[] => {
  const rest = distinct(readings.filter(({ ask }) => ask.kind !== 'tap' && ask.kind !== 'pole'));
  return readings.filter((reading) => reading.ask.kind === 'tap' || rest.includes(reading));
};

/** Seconds at the mat (estimates of ours): the act, and each probe that has to move. */
const ACT = { ohms: 6, beep: 4, tap: 15 } as const;
const PROBE = 5;

export function effortOf(ask: Ask, last: Ask | undefined): Seconds {
  const act = ask.kind in ACT ? ACT[ask.kind as keyof typeof ACT] : 12;
  const now = 'red' in ask ? [ask.red, ask.black] : [];
  const before = last && 'red' in last ? [last.red, last.black] : [];
  return seconds(act + PROBE * now.filter((point) => !before.includes(point)).length);
}
