import type { Circuit } from '../../src/circuit/circuit.ts';
import { type Ohms, ohms } from '../../src/circuit/units.ts';
import type { Ask, Seen } from '../../src/readings/reading.ts';
import { lugNamesOf } from '../oracle/index.ts';
import type { Dice } from './dice.ts';

/** Ways of getting a reading wrong that have nothing to do with the guitar. */
export type Slip = 'prefix' | 'decade' | 'neighbouring lug' | 'switch position';
const slips: readonly Slip[] = ['prefix', 'decade', 'neighbouring lug', 'switch position'];

/** The slip made in one reading, if any. @param share of readings with a slip, 0..1 */
export function drawSlip(share: number, dice: Dice): Slip | undefined {
  return dice.chance(share) ? dice.pick(slips) : undefined;
}

/** What was really done, when a slip of the hand came between the ask and the probes. */
export function misdone(circuit: Circuit, ask: Ask, slip: Slip | undefined, dice: Dice): Ask {
  if (slip === 'neighbouring lug' && 'red' in ask) {
    const end = dice.chance(0.5) ? 'red' : 'black';
    const other = neighbourOf(circuit, ask[end], dice);
    const taken = end === 'red' ? ask.black : ask.red;
    return other === undefined || other === taken ? ask : { ...ask, [end]: other };
  }
  if (slip === 'switch position') {
    const choices = circuit.parts.flatMap((part) =>
      part.kind === 'switch'
        ? part.positions
            .filter(({ name }) => name !== ask.setting.positions[part.id])
            .map(({ name }) => ({ ...ask.setting.positions, [part.id]: name }))
        : [],
    );
    if (choices.length > 0)
      return { ...ask, setting: { ...ask.setting, positions: dice.pick(choices) } };
  }
  return ask;
}

/** What was typed in, when a slip of the eye or thumb came after the display. */
export function mistyped(seen: Seen, slip: Slip | undefined, dice: Dice): Seen {
  if (slip !== 'prefix' && slip !== 'decade') return seen;
  const step = slip === 'prefix' ? 1000 : 10;
  const factor = dice.chance(0.5) ? step : 1 / step;
  const wrong = (value: Ohms | 'open') => (value === 'open' ? value : ohms(value * factor));
  if (seen.kind === 'ohms') return { ...seen, ohms: wrong(seen.ohms) };
  if (seen.kind === 'turn' && seen.peak !== undefined) return { ...seen, peak: wrong(seen.peak) };
  return seen;
}

/** A lug next to the one meant, on the same part; for a bare end, the lug it belongs on. */
function neighbourOf(circuit: Circuit, node: string, dice: Dice): string | undefined {
  const lead = circuit.leads.find(({ id }) => node === `${id}@from` || node === `${id}@to`);
  if (lead) return node.endsWith('@from') ? lead.from : lead.to;
  const part = circuit.parts.find(({ id }) => node.startsWith(`${id}.`));
  if (!part) return undefined;
  const lugs = lugNamesOf(part).map((lug) => `${part.id}.${lug}`);
  const at = lugs.indexOf(node);
  const beside = [lugs[at - 1], lugs[at + 1]].filter((lug) => lug !== undefined);
  return beside.length > 0 ? dice.pick(beside) : undefined;
}
