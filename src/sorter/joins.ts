import type { SeenPickup } from '../circuit/seen-pickup.ts';
import { joiningWords } from '../words/en/joinings.ts';
import type { Role } from './inside.ts';
import type { Sorting } from './sort.ts';

/** How to join the leads for one way of playing. Leads by id; those in one list are soldered together. */
export interface Joining {
  readonly way:
    | 'series'
    | 'parallel'
    | 'screw alone'
    | 'slug alone'
    | 'whole'
    | 'lower part'
    | 'reversed';
  readonly title: string;
  readonly hot: readonly string[];
  readonly ground: readonly string[];
  /** Joined to each other and to nothing else; taped over. */
  readonly together: readonly string[];
  /** Taped over, each alone. */
  readonly apart: readonly string[];
  /** What a switch may do with it. */
  readonly note?: string;
  /** Why not as it stands; undefined where nothing speaks against it. */
  readonly warning?: string;
}

/** What a switch at the join of two coils in series does. */
const splitNote = (joined: readonly string[], slugIsHot: boolean): string => {
  const say = joiningWords();
  if (joined.length > 1) return slugIsHot ? say.splitOfTwoSlugHot : say.splitOfTwoScrewHot;
  return slugIsHot ? say.splitSlugHot : say.splitScrewHot;
};

/** Ways to join the leads, the usual one first. Empty where too little of the pickup is whole. Plus ends are hot, so that all of them are in phase with each other. */
export function joinings(
  sorting: Sorting,
  seen: Pick<SeenPickup, 'plate' | 'leads'>,
): readonly Joining[] {
  const at = (role: Role): readonly string[] =>
    sorting.leads.filter((one) => one.role === role).map(({ lead }) => lead);
  const metal = [...at('plate'), ...at('cover')];
  const dead = sorting.leads
    .filter(({ role }) => role === 'nothing' || role.endsWith('.open'))
    .map(({ lead }) => lead);
  const [aMinus, aPlus, bMinus, bPlus] = (
    ['a.start', 'a.finish', 'b.start', 'b.finish'] as const
  ).map(at) as [readonly string[], readonly string[], readonly string[], readonly string[]];
  const [link, tap] = [at('link'), at('tap')];
  const [minus, plus] = [at('pair.start'), at('pair.finish')];
  const unseenMetal = !seen.plate && !seen.leads.some(({ what }) => what === 'bare');
  const found: Joining[] = [];
  const add = (
    way: Joining['way'],
    title: string,
    hot: readonly string[],
    ground: readonly string[],
    together: readonly string[] = [],
    apart: readonly string[] = [],
  ): void => {
    const warning =
      hotMetal(sorting, hot) ??
      (way === 'reversed' && unseenMetal ? joiningWords().unseenMetal : undefined);
    found.push({
      way,
      title,
      hot,
      ground: [...ground, ...metal],
      together,
      apart: [...apart, ...dead],
      ...(way === 'series' && (together.length > 0 || link.length > 0)
        ? {
            note: splitNote(
              together.length > 0 ? together : link,
              hot.every((one) => bPlus.includes(one)),
            ),
          }
        : {}),
      ...(warning ? { warning } : {}),
    });
  };
  const whole = (list: readonly (readonly string[])[]) => list.every(({ length }) => length > 0);
  if (whole([aMinus, aPlus, bMinus, bPlus])) {
    add('series', joiningWords().series, bPlus, aMinus, [...aPlus, ...bMinus]);
    add('parallel', joiningWords().parallel, [...aPlus, ...bPlus], [...aMinus, ...bMinus]);
    add('slug alone', joiningWords().slugAlone, bPlus, [...bMinus], [], [...aPlus, ...aMinus]);
    add('screw alone', joiningWords().screwAlone, aPlus, [...aMinus], [], [...bPlus, ...bMinus]);
    add('reversed', joiningWords().seriesReversed, bMinus, aPlus, [...bPlus, ...aMinus]);
  } else if (
    link.length > 0 &&
    aMinus.length + aPlus.length > 0 &&
    bMinus.length + bPlus.length > 0
  ) {
    const [aEnd, bEnd] = [aMinus.length > 0 ? aMinus : aPlus, bMinus.length > 0 ? bMinus : bPlus];
    const fights = aMinus.length > 0 === bMinus.length > 0;
    if (fights)
      // Joined plus to plus or minus to minus inside: in parallel across the join they add.
      add(
        'parallel',
        joiningWords().parallel,
        aMinus.length > 0 ? link : [...aEnd, ...bEnd],
        aMinus.length > 0 ? [...aEnd, ...bEnd] : link,
      );
    else {
      const [hot, cold] = bPlus.length > 0 ? [bPlus, aMinus] : [aPlus, bMinus];
      add('series', joiningWords().series, hot, cold, [], link);
      add('reversed', joiningWords().seriesReversed, cold, hot, [], link);
    }
    const alone = (end: readonly string[], isPlus: boolean, other: readonly string[]) =>
      [isPlus ? end : link, isPlus ? link : end, [], other] as const;
    add('slug alone', joiningWords().slugAlone, ...alone(bEnd, bPlus.length > 0, aEnd));
    add('screw alone', joiningWords().screwAlone, ...alone(aEnd, aPlus.length > 0, bEnd));
  } else if (minus.length > 0 && plus.length > 0) {
    add('series', joiningWords().seriesInside, plus, minus);
    add('reversed', joiningWords().reversed, minus, plus);
  } else if (aMinus.length > 0 && aPlus.length > 0) {
    add('whole', joiningWords().whole, aPlus, aMinus, [], [...tap, ...link]);
    if (tap.length > 0) add('lower part', joiningWords().fromTap, tap, aMinus, [], aPlus);
    add('reversed', joiningWords().reversed, aMinus, aPlus, [], [...tap, ...link]);
  } else if (bMinus.length > 0 && bPlus.length > 0) {
    add('slug alone', joiningWords().slugAlone, bPlus, bMinus);
    add('reversed', joiningWords().reversed, bMinus, bPlus);
  }
  return found;
}

/** Where the plate is joined to a coil end inside, hot may be any end but that one. */
function hotMetal(sorting: Sorting, hot: readonly string[]): string | undefined {
  return sorting.onPlate !== null && hot.includes(sorting.onPlate)
    ? joiningWords().hotMetal
    : undefined;
}
