import type { Edit } from '../../src/circuit/edit.ts';
import type { AskOf, SeenOf } from '../../src/readings/reading.ts';
import type { Bench } from './bench.ts';
import type { Dice } from './dice.ts';
import { isHeard } from './metals.ts';
import { outputOf } from './output.ts';

/** Readings by hand and eye. Shares of error are common practice, no source. */

/**
 * A hand on grounded metal takes the hum down, on metal whose current is heard at the output up; on metal that is joined to
 * nothing it mostly changes nothing. One answer in ten is another one.
 */
export function readTouch(bench: Bench, ask: AskOf<'touch'>, dice: Dice): SeenOf<'touch'> {
  const { sleeve } = outputOf(bench.circuit);
  const toGround = bench.ohms(ask.setting, [ask.metal, sleeve]);
  const other = dice.pick(['up', 'down', 'same'] as const);
  if (dice.chance(0.1)) return { kind: 'touch', hum: other };
  if (toGround < 1000) return { kind: 'touch', hum: 'down' };
  if (isHeard(bench, ask.setting, ask.metal)) return { kind: 'touch', hum: 'up' };
  // Through kilohms the body still drains a part of the hum.
  if (toGround < 100_000) return { kind: 'touch', hum: dice.chance(0.5) ? 'down' : 'same' };
  return { kind: 'touch', hum: dice.chance(0.7) ? 'same' : 'up' };
}

export function readPole(bench: Bench, ask: AskOf<'pole'>, dice: Dice): SeenOf<'pole'> {
  const north = bench.magnet(ask.coil) > 0;
  const error = dice.throw();
  if (error < 0.02) return { kind: 'pole', pole: 'none' };
  return { kind: 'pole', pole: north === error >= 0.04 ? 'north' : 'south' };
}

type Look = SeenOf<'look'>['how'];

/** @param finds chance that a fault which can be seen is seen; one sound joint in 25 is called dull, one in 100 is taken for another's */
export function readLook(
  bench: Bench,
  ask: AskOf<'look'>,
  finds: number,
  dice: Dice,
): SeenOf<'look'> {
  const sight = bench.edits
    .map((edit) => sightOf(bench, edit, ask.at))
    .find((how) => how !== 'good');
  if (sight && dice.chance(finds)) return { kind: 'look', how: sight };
  const error = dice.throw();
  return { kind: 'look', how: error < 0.04 ? 'dull' : error < 0.05 ? 'elsewhere' : 'good' };
}

/** What an edit looks like at a joint or part. Nothing inside a pickup, a can or a track can be seen. */
function sightOf({ circuit }: Bench, edit: Edit, at: string): Look {
  const lead = circuit.leads.find(({ id }) => at === `${id}@from` || at === `${id}@to`);
  const lug = lead && (at.endsWith('@from') ? lead.from : lead.to);
  const hidden = lead !== undefined && lead.kind !== 'wire' && at.endsWith('@from');
  switch (edit.op) {
    case 'open':
    case 'intermittent':
      // A wire that parted hangs loose at both its ends; a joint at its own.
      return !hidden && (edit.site === at || edit.site === lead?.id) ? 'loose' : 'good';
    case 'resist':
      return !hidden && edit.site === at ? 'dull' : 'good';
    // The lead that belongs here is not here. One on the coil itself is out of sight.
    case 'land':
      return !hidden && edit.joint === at ? 'elsewhere' : 'good';
    case 'exchange':
      return !hidden && lug !== undefined && edit.lugs.includes(lug) ? 'elsewhere' : 'good';
    case 'bridge': {
      // Leakage of kilohms leaves no solder to see.
      if (edit.ohms > 1000) return 'good';
      const ends = [edit.a, edit.b];
      const touches = ends.some((end) => end === at || end === lug || end.startsWith(`${at}.`));
      return touches && !hidden ? 'bridged' : 'good';
    }
    default:
      return 'good';
  }
}
