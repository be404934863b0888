import fc from 'fast-check';
import { expect, it } from 'vitest';
import { startingWirings } from '../catalog/index.ts';
import { checkCircuit } from '../check.ts';
import type { Circuit } from '../circuit.ts';
import { CircuitError } from '../errors.ts';
import { type Act, afterAct } from './act.ts';
import { lugsOf } from './find.ts';
import { begun, did, type History, presentOf, redid, undid } from './history.ts';
import { tray } from './tray/index.ts';
import { freeName } from './tray/names.ts';

const nothing: Circuit = { id: 'drawn', title: 'drawn', parts: [], leads: [], pickups: [] };
const starts = [nothing, ...startingWirings.map(({ build }) => build())];

/** Any number, to be taken as a place in whatever list there is when its turn comes. */
const pick = fc.nat({ max: 9999 });
const words = fc.oneof(fc.constantFrom('', ' ', 'volume', 'red'), fc.string({ maxLength: 250 }));
const move = fc.record({
  act: fc.constantFrom(
    'add',
    'add',
    'join',
    'join',
    'join',
    'remove',
    'cut',
    'solder',
    'colour',
    'kind',
    'rename',
    'change',
    'undo',
    'redo',
  ),
  one: pick,
  other: pick,
  words,
});
type Move = typeof move extends fc.Arbitrary<infer T> ? T : never;

const nth = <T>(list: readonly T[], at: number): T | undefined =>
  list[at % Math.max(1, list.length)];

/** An act that may or may not be possible: names are mostly those of the wiring, sometimes of nothing. */
function actFrom(circuit: Circuit, { act, one, other, words: text }: Move): Act {
  const lugs = [...circuit.parts.flatMap(lugsOf), 'gone.1'];
  const lead = nth([...circuit.leads.map(({ id }) => id), 'gone'], one) ?? 'gone';
  const part = nth([...circuit.parts.map(({ id }) => id), 'gone'], one) ?? 'gone';
  switch (act) {
    case 'join':
      return {
        do: 'join',
        lead: freeName(circuit, 'wire'),
        from: nth(lugs, one)!,
        to: nth(lugs, other)!,
      };
    case 'remove':
      return { do: 'remove', part };
    case 'cut':
      return { do: 'cut', lead };
    case 'solder':
      return {
        do: 'solder',
        joint: `${lead}@${other % 2 ? 'from' : 'to'}`,
        lug: nth(lugs, other)!,
      };
    case 'colour':
      return { do: 'colour', lead, colour: text };
    case 'kind':
      return { do: 'kind', lead, kind: nth(['wire', 'mount', 'leg', 'pickup'] as const, other)! };
    case 'rename':
      return {
        do: 'rename',
        thing: nth([part, ...circuit.pickups.map(({ id }) => id)], other)!,
        title: text,
      };
    case 'change': {
      const item = nth(tray, other)!;
      const made = item.make(nothing, chosenFrom(item.choices(nothing, {}), one)).parts[0]!;
      return {
        do: 'change',
        part: { ...made, id: part, title: nth(circuit.parts, one)?.title ?? 'x' },
      };
    }
    default: {
      const item = nth(tray, one)!;
      return { do: 'add', ...item.make(circuit, chosenFrom(item.choices(circuit, {}), other)) };
    }
  }
}

const chosenFrom = (choices: ReturnType<(typeof tray)[number]['choices']>, at: number) =>
  Object.fromEntries(
    choices.map(({ id, options }, place) => [id, nth(options, Math.floor(at / (place + 1)))!.id]),
  );

it('any acts leave a wiring that passes the door or are refused with a sentence, and undo gives the start back', () => {
  fc.assert(
    fc.property(fc.constantFrom(...starts), fc.array(move, { maxLength: 40 }), (start, moves) => {
      let history: History<Circuit, Act> = begun(start);
      const states = [JSON.stringify(start)];
      for (const one of moves) {
        const before = JSON.stringify(presentOf(history));
        if (one.act === 'undo') history = undid(history);
        else if (one.act === 'redo') history = redid(history, afterAct);
        else
          try {
            history = did(history, actFrom(presentOf(history), one), afterAct);
          } catch (error) {
            if (!(error instanceof CircuitError)) throw error;
            expect(error.message).toMatch(/\w \w/);
            expect(JSON.stringify(presentOf(history))).toBe(before);
          }
        const present = presentOf(history);
        if (present.parts.length > 0) checkCircuit(present);
        states.push(JSON.stringify(present));
      }
      const end = JSON.stringify(presentOf(history));
      const count = history.done.length;
      for (let at = 0; at < count; at += 1) history = undid(history);
      expect(presentOf(history)).toBe(start);
      for (let at = 0; at < count; at += 1) history = redid(history, afterAct);
      expect(JSON.stringify(presentOf(history))).toBe(end);
    }),
    { numRuns: 150, seed: 7 },
  );
});
