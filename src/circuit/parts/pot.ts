import { circuitWords } from '../../words/en/circuit.ts';
import { CircuitError } from '../errors.ts';
import { ohms } from '../units.ts';
import type { PartKindSpec } from './kind.ts';
import type { Pot } from './part.ts';
import { checkValue, expectedValue } from './value.ts';

/** Ohms that stay between the wiper and an end lug at the end stop: 1 to 100 in the trade (common practice, no source). */
export const END_OHMS = 10;

/** A figure of the knob as a share of the clockwise turn, and back: a left-handed knob counts the other way. */
const clockwise = ({ leftHanded }: Pick<Pot, 'leftHanded'>, turn: number): number =>
  leftHanded ? 1 - turn : turn;

/** What `trackShare` needs to know of a pot. */
type Track = Pick<Pot, 'taper' | 'midShare' | 'leftHanded'>;

/** Share of the track between lug 1 and the wiper, 0..1, for a knob figure 0..10. Audio tapers run in two straight segments through half turn. */
export function trackShare(pot: Track, knob: number): number {
  const turn = clockwise(pot, Math.min(1, Math.max(0, knob / 10)));
  const audio = (t: number) =>
    t <= 0.5 ? 2 * t * pot.midShare : pot.midShare + (2 * t - 1) * (1 - pot.midShare);
  if (pot.taper === 'linear') return turn;
  return pot.taper === 'audio' ? audio(turn) : 1 - audio(1 - turn);
}

/** The knob figure at which `trackShare` is this: its inverse. */
export function knobAt(pot: Track, share: number): number {
  const audio = (s: number) =>
    s <= pot.midShare
      ? s / (2 * pot.midShare)
      : 0.5 + (s - pot.midShare) / (2 * (1 - pot.midShare));
  const turn =
    pot.taper === 'linear' ? share : pot.taper === 'audio' ? audio(share) : 1 - audio(1 - share);
  return 10 * clockwise(pot, turn);
}

/** Whether the wiper is off the track: only the last degree of a no-load pot's turn (common practice, no source). */
export const offTrack = ({ noLoad }: Pick<Pot, 'noLoad'>, knob: number): boolean =>
  noLoad === true && knob > 9.9;

/** A track that is no longer than its ends, as a value typed without its k, has shorter ones: no piece may come out below zero. */
const endOhms = (track: number): number => Math.min(END_OHMS, track / 10);

/** A piece of a track once the whole track is `factor` times its value: its end stays as it is. */
export function scaledTrack(part: Pot, piece: number, factor: number): number {
  const track = expectedValue(part.ohms);
  const end = endOhms(track);
  const share = (piece - end) / (track - 2 * end);
  return end + (factor * track - 2 * end) * share;
}

/** Lug 1 is the counter-clockwise end, 2 the wiper, 3 the clockwise end; from the back with the lugs down they stand 3 2 1. */
export const pot: PartKindSpec<Pot> = {
  lugs: () => ['1', '2', '3', 'case'],
  branches(part, setting) {
    const track = expectedValue(part.ohms);
    const knob = setting.knobs[part.id] ?? 10;
    const share = trackShare(part, knob);
    const end = endOhms(track);
    const piece = (s: number) => ohms(end + (track - 2 * end) * s);
    return [
      {
        name: 'lower',
        a: '1',
        b: 'inside',
        what: { type: 'resistance', ohms: piece(share), value: part.id },
        closed: true,
      },
      {
        name: 'upper',
        a: 'inside',
        b: '3',
        what: { type: 'resistance', ohms: piece(1 - share), value: part.id },
        closed: true,
      },
      {
        name: 'wiper',
        a: 'inside',
        b: '2',
        what: { type: 'contact' },
        closed: !offTrack(part, knob),
      },
    ];
  },
  check(part) {
    checkValue(part.title, 'ohm', part.ohms);
    if (!(part.midShare > 0 && part.midShare < 1))
      throw new CircuitError(
        'value-out-of-range',
        part.title,
        circuitWords().partTheShareAtHalfTurnShould(part.title, String(part.midShare)),
      );
  },
};
