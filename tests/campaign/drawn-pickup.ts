import type { Circuit, Lead } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import type { Coil, Part } from '../../src/circuit/parts/part.ts';
import type { SeenLead, SeenPickup } from '../../src/circuit/seen-pickup.ts';
import { farads, henries, ohms } from '../../src/circuit/units.ts';
import type { Dice } from '../simulated/index.ts';

/** A pickup as its maker made it, with its leads drawn in any order, and what each lead should turn out to be. */
export interface DrawnPickup {
  readonly kind: string;
  readonly seen: SeenPickup;
  readonly real: Circuit;
  readonly edits: readonly Edit[];
  readonly trouble: string;
  /** Right answers, lead by lead in the order of `seen.leads`. */
  readonly roles: readonly string[];
}

interface Build {
  readonly kind: string;
  readonly coils: 1 | 2;
  /** Lugs joined inside, and the lug of every insulated lead. Plus ends are `plus`, minus ends `minus`. */
  readonly joins: readonly (readonly [string, string])[];
  readonly wires: readonly string[];
  readonly bare: boolean;
  readonly cover: boolean;
  readonly pair?: string;
}

const four = ['a.minus', 'a.plus', 'b.minus', 'b.plus'];
const builds: readonly Build[] = [
  {
    kind: 'one coil',
    coils: 1,
    joins: [],
    wires: ['a.minus', 'a.plus'],
    bare: false,
    cover: false,
  },
  {
    kind: 'one coil and bare',
    coils: 1,
    joins: [],
    wires: ['a.minus', 'a.plus'],
    bare: true,
    cover: false,
  },
  {
    kind: 'one coil with a tap',
    coils: 1,
    joins: [['a.plus', 'b.minus']],
    wires: ['a.minus', 'a.plus', 'b.plus'],
    bare: false,
    cover: false,
  },
  {
    kind: 'two coils joined inside, bare',
    coils: 2,
    joins: [['a.plus', 'b.minus']],
    wires: ['a.minus', 'b.plus'],
    bare: true,
    cover: false,
  },
  {
    kind: 'two coils, three wires',
    coils: 2,
    joins: [['a.plus', 'b.minus']],
    wires: ['a.minus', 'a.plus', 'b.plus'],
    bare: false,
    cover: false,
  },
  {
    kind: 'two coils, joined pair, bare',
    coils: 2,
    joins: [['b.plus', 'a.minus']],
    wires: ['b.minus', 'b.plus', 'a.plus'],
    bare: true,
    cover: false,
    pair: 'b.plus',
  },
  { kind: 'two coils, four wires', coils: 2, joins: [], wires: four, bare: false, cover: false },
  {
    kind: 'two coils, four wires and bare',
    coils: 2,
    joins: [],
    wires: four,
    bare: true,
    cover: false,
  },
  {
    kind: 'two coils, five wires',
    coils: 2,
    joins: [],
    wires: [...four, 'plate.metal'],
    bare: false,
    cover: false,
  },
  {
    kind: 'two coils, three wires, coils opposed',
    coils: 2,
    joins: [['a.plus', 'b.plus']],
    wires: ['a.minus', 'a.plus', 'b.minus'],
    bare: false,
    cover: false,
  },
  {
    kind: 'two coils, five wires and bare, cover',
    coils: 2,
    joins: [],
    wires: [...four, 'cover.metal'],
    bare: true,
    cover: true,
  },
];

const colours = ['red', 'green', 'white', 'black', 'blue', 'yellow', 'orange', 'violet'];
type Trouble = 'none' | 'open coil' | 'dead lead' | 'touches plate' | 'uneven';

export function drawPickup(at: number, dice: Dice): DrawnPickup {
  const build = builds[at % builds.length] as Build;
  const trouble = troubleOf(dice.throw());
  const two = build.coils === 2 || build.joins.length > 0;
  const size = build.coils === 2 ? dice.between(2600, 7200) : dice.between(4000, 12000);
  const factor = build.kind.includes('tap')
    ? dice.between(0.3, 1.5)
    : trouble === 'uneven'
      ? dice.between(0.2, 0.85)
      : 1;
  const lower = dice.chance(0.5) ? 'a' : 'b';
  const signs = { a: dice.chance(0.5) ? 1 : -1, b: dice.chance(0.5) ? 1 : -1 } as const;
  // On one core the windings go one way.
  const senseOf = (id: 'a' | 'b') => (build.coils === 1 ? signs.a : signs[id]);
  const lugOf = (name: string): string => {
    const [id, end] = name.split('.') as ['a' | 'b', string];
    if (end !== 'plus' && end !== 'minus') return name;
    return `${id}.${(end === 'plus') === (senseOf(id) === 1) ? 'finish' : 'start'}`;
  };
  const coil = (id: 'a' | 'b'): Coil => {
    const magnet = dice.chance(0.5) ? 1 : -1;
    return {
      kind: 'coil',
      id,
      title: id,
      ohms: { nominal: ohms(size * (id === lower ? factor : 1)), tolerance: 0.16 },
      henries: henries(2.5),
      selfFarads: farads(110e-12),
      winding: (senseOf(id) * magnet) as 1 | -1,
      magnet,
      place: build.coils === 1 ? 'single' : id === 'a' ? 'screw' : 'slug',
      ends: 'sealed',
    };
  };
  const ends = [
    ...build.wires.map((name) => ({ name, what: name === build.pair ? 'pair' : 'wire' }) as const),
    ...(build.bare ? [{ name: 'plate.metal', what: 'bare' } as const] : []),
  ];
  const order = shuffled(ends, dice);
  const names = shuffled(colours, dice);
  const leads = order.map(
    ({ what }, index): SeenLead => ({
      id: `lead${index + 1}`,
      colour: names[index] as string,
      what,
    }),
  );
  const parts: Part[] = [
    coil('a'),
    ...(two ? [coil('b')] : []),
    { kind: 'metal', id: 'plate', title: 'plate', role: 'plate', outside: false },
    { kind: 'metal', id: 'cover', title: 'cover', role: 'cover', outside: false },
    ...leads.map(({ id, colour }): Part => ({ kind: 'splice', id: `${id}End`, title: colour })),
  ];
  const real: Circuit = {
    id: 'real',
    title: build.kind,
    parts,
    leads: [
      ...order.map(
        ({ name }, index): Lead => ({
          id: `lead${index + 1}`,
          kind: 'pickup',
          from: lugOf(name),
          to: `lead${index + 1}End.joint`,
        }),
      ),
      ...build.joins.map(
        ([x, y], index): Lead => ({
          id: `inside${index}`,
          kind: 'wire',
          from: lugOf(x),
          to: lugOf(y),
        }),
      ),
    ],
    pickups: [{ id: 'pickup', title: 'pickup', coils: two ? ['a', 'b'] : ['a'] }],
  };
  const broken = dice.pick(two ? (['a', 'b'] as const) : (['a'] as const));
  const dead = dice.pick(order);
  const edits = editsOf();
  return {
    kind: build.kind,
    seen: { coils: build.coils, leads, plate: true, cover: build.cover },
    real,
    edits,
    trouble,
    roles: order.map((end) => roleOf(end)),
  };

  function editsOf(): readonly Edit[] {
    switch (trouble) {
      case 'open coil':
        return [{ op: 'open', site: `${broken}:winding` }];
      case 'dead lead':
        return [{ op: 'open', site: `lead${order.indexOf(dead) + 1}` }];
      case 'touches plate':
        return [
          {
            op: 'bridge',
            a: `${broken}.start`,
            b: 'plate.metal',
            ohms: ohms(dice.between(1, 900)),
          },
        ];
      default:
        return [];
    }
  }

  /** What a lead turns out to be, from how the pickup was built and what was broken. */
  function roleOf(end: (typeof order)[number]): string {
    const [id, side] = end.name.split('.') as [string, string];
    if (side === 'metal') return trouble === 'dead lead' && end === dead ? 'nothing' : id;
    const inside = build.joins[0];
    const joined = inside?.includes(end.name) ?? false;
    const isDead = trouble === 'dead lead' && end === dead;
    const deadSide = trouble === 'dead lead' ? dead.name : null;
    const deadJoin = deadSide !== null && (inside?.includes(deadSide) ?? false);
    const openCoil =
      trouble === 'open coil'
        ? broken
        : deadSide !== null && !deadSide.endsWith('metal') && !deadJoin
          ? (deadSide[0] as 'a' | 'b')
          : null;
    const end2 = (plus: boolean) => (plus ? 'finish' : 'start');
    if (build.coils === 1 && build.joins.length > 0) {
      // A tapped coil: minus end, tap, plus end.
      if (joined) {
        if (isDead) return 'nothing';
        if (openCoil === 'a') return 'a.start';
        return openCoil === 'b' ? 'a.finish' : 'tap';
      }
      if (openCoil === id) return 'nothing';
      return `a.${end2(side === 'plus')}`;
    }
    if (!inside) return openCoil === id ? `${id}.open` : `${id}.${end2(side === 'plus')}`;
    const hasJoinLead = build.wires.some((name) => inside.includes(name));
    if (!hasJoinLead) return openCoil ? 'pair.open' : `pair.${end2(side === 'plus')}`;
    if (joined) {
      if (isDead) return 'nothing';
      if (!openCoil) return 'link';
      const other = openCoil === 'a' ? 'b' : 'a';
      const at = inside.find((name) => name.startsWith(other)) as string;
      return `${other}.${end2(at.endsWith('plus'))}`;
    }
    if (openCoil === id) return `${id}.open`;
    if (deadJoin) {
      const opposed = inside[0].slice(2) === inside[1].slice(2);
      if (!opposed) return `pair.${end2(side === 'plus')}`;
      return id === 'a' ? `a.${end2(side === 'plus')}` : `a.${end2(side !== 'plus')}`;
    }
    return `${id}.${end2(side === 'plus')}`;
  }
}

/** Shares of what is wrong: seven in ten have nothing. */
function troubleOf(thrown: number): Trouble {
  if (thrown < 0.7) return 'none';
  if (thrown < 0.8) return 'open coil';
  if (thrown < 0.86) return 'dead lead';
  return thrown < 0.9 ? 'touches plate' : 'uneven';
}

function shuffled<T>(list: readonly T[], dice: Dice): T[] {
  const left = [...list];
  return list.map(() => left.splice(Math.floor(dice.throw() * left.length), 1)[0] as T);
}
