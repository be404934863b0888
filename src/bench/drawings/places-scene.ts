import type { Circuit } from '../../circuit/circuit.ts';
import type { SiteId } from '../../circuit/edit.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import { restingSetting } from '../../circuit/setting.ts';
import { ended, type Rests } from '../../diagnosis/rests.ts';
import { plansFor } from './plan.ts';
import { type Lie, USUAL_LIE } from './portrait.ts';
import { framed, type Panel, panelInSteps } from './scene.ts';

/** Panels for places to be looked at; two places on one part, or on one pickup, share its panel. */
export const placesScene = (
  circuit: Circuit,
  sites: readonly (SiteId | PartId)[],
  lie: Lie = USUAL_LIE,
): readonly (readonly Panel[])[] => ended(placesInSteps(circuit, sites, lie));

/** The same, with rests. */
export function* placesInSteps(
  circuit: Circuit,
  sites: readonly (SiteId | PartId)[],
  lie: Lie,
): Rests<readonly (readonly Panel[])[]> {
  const setting = restingSetting(circuit);
  const planned = sites.flatMap((at) => {
    const ask = { kind: 'look', at, setting } as const;
    return plansFor(circuit, ask).map((plan) => ({ ask, plan }));
  });
  const first = planned.filter(
    ({ plan }, i) =>
      planned.findIndex((other) => other.plan.subject.key === plan.subject.key) === i,
  );
  const rows: (readonly Panel[])[] = [];
  for (const row of framed(
    first.map(({ plan }) => plan),
    'look',
  )) {
    const joined: Panel[] = [];
    for (const framing of row) {
      const { key, title } = framing.plan.subject;
      const panels: Panel[] = [];
      for (const { ask, plan } of planned) {
        if (plan.subject.key !== key) continue;
        yield;
        panels.push(yield* panelInSteps(circuit, ask, framing, lie));
      }
      joined.push(panels.length === 1 ? panels[0]! : togetherIn(panels, title));
    }
    rows.push(joined);
  }
  return rows;
}

/** Panels of one part as one, with the marks of all. */
const togetherIn = (panels: readonly Panel[], title: string): Panel => {
  const panel = panels[0]!;
  return {
    ...panel,
    portrait: { ...panel.portrait, title },
    asked: new Set(panels.flatMap(({ asked }) => [...asked])),
    marks: panels.flatMap(({ marks }) => marks),
  };
};
