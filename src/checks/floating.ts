import type { Circuit, LugRef } from '../circuit/circuit.ts';
import { kindOf } from '../circuit/parts/index.ts';
import type { Part, Switch } from '../circuit/parts/part.ts';
import { contacts } from '../circuit/parts/switch.ts';
import { checkWords } from '../words/en/checks.ts';
import { commonWords } from '../words/en/common.ts';
import type { Network } from './network.ts';
import type { Warning } from './warning.ts';
import { capital, lugWords } from './words.ts';

/**
 * Lugs that something should end on, and lugs whose leads end there and lead nowhere. Unused lugs are no fault: a tone pot
 * uses two of three, a switch may have a pole to spare, and the middle lead of a pickup may be taped.
 */
export function floatingLugs(circuit: Circuit, network: Network): readonly Warning[] {
  const led = new Set(circuit.leads.flatMap(({ from, to }) => [from, to]));
  const grounded = (lug: LugRef) => network.pointOf(lug) === network.jack?.sleeve;
  const lugsOf = (part: Part) =>
    kindOf(part)
      .lugs(part)
      .map((lug) => `${part.id}.${lug}`);
  const warn = (part: Part, lugs: readonly LugRef[], sentence: string): Warning => ({
    kind: 'floating',
    lugs,
    parts: [part.id],
    sentence,
  });
  const unled = circuit.parts.flatMap((part): Warning[] => {
    const lugs = lugsOf(part);
    if (!lugs.some((lug) => led.has(lug))) {
      // Metal without ground is told as that; a joint in the air that is not in use does no harm.
      if (part.kind === 'metal' || part.kind === 'splice') return [];
      return [warn(part, lugs, checkWords().nothingIsSoldered(part.title))];
    }
    return needs(part, led, grounded).map((missing) =>
      warn(
        part,
        missing,
        checkWords().nothingOnIt(
          capital(commonWords().or(missing.map((lug) => lugWords(network, lug)))),
        ),
      ),
    );
  });
  return [...unled, ...deadEnds(network, led)];
}

/** Lugs that must have a lead where the part has any; where one of several is enough, together in one list. */
function needs(
  part: Part,
  led: ReadonlySet<LugRef>,
  grounded: (lug: LugRef) => boolean,
): readonly (readonly LugRef[])[] {
  const bare = (...names: readonly string[]) =>
    names.map((name) => `${part.id}.${name}`).filter((lug) => !led.has(lug));
  const each = (...names: readonly string[]) => bare(...names).map((lug) => [lug]);
  switch (part.kind) {
    case 'coil':
      return each('start', 'finish');
    case 'capacitor':
    case 'resistor':
      return each('a', 'b');
    case 'jack':
      return each('tip', 'sleeve');
    case 'pot': {
      if (part.role === 'volume') return each('1', '2', '3');
      const free = bare('1', '2', '3');
      return free.length > 1 ? [free] : [];
    }
    case 'switch':
      return poleNeeds(part, led, grounded);
    case 'metal':
    case 'splice':
      return [];
  }
}

/**
 * For each lug with a lead that no position joins to another lug with a lead: the lugs it would meet. A common lug, one that
 * has a part in every contact of its pole, is needed wherever an outer lug is used, unless it is there to ground one outer lug by
 * way of another: so a blade splits a coil in its in-between positions.
 */
function poleNeeds(
  part: Switch,
  led: ReadonlySet<LugRef>,
  grounded: (lug: LugRef) => boolean,
): readonly (readonly LugRef[])[] {
  const found = new Map<string, readonly LugRef[]>();
  for (const name of part.rows.flat()) {
    const lug = `${part.id}.${name}`;
    if (!led.has(lug)) continue;
    const meets = new Set(
      part.positions
        .flatMap(({ joins }) => [...joinedWith(name, joins)])
        .filter((other) => other !== name),
    );
    const lugs = [...meets].map((other) => `${part.id}.${other}`);
    if (lugs.length > 0 && !lugs.some((other) => led.has(other))) found.set(lugs.join(), lugs);
  }
  for (const { a, b } of contacts(part))
    for (const [outer, common] of [
      [a, b],
      [b, a],
    ] as const) {
      const [lug, other] = [`${part.id}.${common}`, `${part.id}.${outer}`];
      if (
        isCommon(part, common) &&
        led.has(other) &&
        !led.has(lug) &&
        !bridges(part, common, led, grounded)
      )
        found.set(lug, [lug]);
    }
  return [...found.values()];
}

/** Whether some position joins a grounded outer lug and another one in use over this common. */
const bridges = (
  part: Switch,
  common: string,
  led: ReadonlySet<LugRef>,
  grounded: (lug: LugRef) => boolean,
): boolean =>
  part.positions.some(({ joins }) => {
    const met = [...joinedWith(common, joins)]
      .map((name) => `${part.id}.${name}`)
      .filter((lug) => led.has(lug));
    return met.length > 1 && met.some(grounded) && !met.every(grounded);
  });

/** Whether every contact of the lug's pole is one of its own, and there are several. */
function isCommon(part: Switch, lug: string): boolean {
  const all = contacts(part);
  const pole = joinedWith(
    lug,
    all.map(({ a, b }) => [a, b] as const),
  );
  const own = all.filter(({ a }) => pole.has(a));
  return pole.size > 2 && own.every(({ a, b }) => a === lug || b === lug);
}

function joinedWith(
  name: string,
  joins: readonly (readonly [string, string])[],
): ReadonlySet<string> {
  const found = new Set([name]);
  for (let grown = true; grown; ) {
    grown = false;
    for (const [a, b] of joins)
      if (found.has(a) !== found.has(b)) {
        found.add(a).add(b);
        grown = true;
      }
  }
  return found;
}

/** Leads that go on from one lug to nothing but joints in the air. */
function deadEnds(network: Network, led: ReadonlySet<LugRef>): readonly Warning[] {
  const partAt = (lug: LugRef) => network.layout.parts.get(lug.slice(0, lug.indexOf('.')));
  const nets = new Map<number, LugRef[]>();
  for (const lug of led) {
    const point = network.pointOf(lug);
    nets.set(point, [...(nets.get(point) ?? []), lug]);
  }
  return [...nets.values()].flatMap((lugs): Warning[] => {
    const ends = lugs.filter((lug) => partAt(lug)?.kind !== 'splice');
    const [end] = ends;
    const joint = lugs.find((lug) => partAt(lug)?.kind === 'splice');
    // Metal without ground is told as that.
    if (ends.length !== 1 || !end || !joint || partAt(end)?.kind === 'metal') return [];
    return [
      {
        kind: 'floating',
        lugs: [joint, end],
        parts: [],
        sentence: checkWords().whatComesFromLugEndsAtLug2(
          lugWords(network, end),
          lugWords(network, joint),
        ),
      },
    ];
  });
}
