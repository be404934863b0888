import type { Circuit } from '../../circuit/circuit.ts';
import type { SiteId } from '../../circuit/edit.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import { restingSetting } from '../../circuit/setting.ts';
import { plansFor } from './plan.ts';
import { type Lie, USUAL_LIE } from './portrait.ts';
import { framed, type Panel, panelOf } from './scene.ts';

/** Panels for places to be looked at; two places on one part, or on one pickup, share its panel. */
export function placesScene(
  circuit: Circuit,
  sites: readonly (SiteId | PartId)[],
  lie: Lie = USUAL_LIE,
): readonly (readonly Panel[])[] {
  const setting = restingSetting(circuit);
  const planned = sites.flatMap((at) => {
    const ask = { kind: 'look', at, setting } as const;
    return plansFor(circuit, ask).map((plan) => ({ ask, plan }));
  });
  const first = planned.filter(
    ({ plan }, i) =>
      planned.findIndex((other) => other.plan.subject.key === plan.subject.key) === i,
  );
  return framed(
    first.map(({ plan }) => plan),
    'look',
  ).map((row) =>
    row.map((framing) => {
      const { plan } = framing;
      const here = planned.filter((other) => other.plan.subject.key === plan.subject.key);
      const panels = here.map(({ ask }) => panelOf(circuit, ask, framing, lie));
      const [panel, ...more] = panels as [Panel, ...Panel[]];
      if (more.length === 0) return panel;
      const { title } = plan.subject;
      return {
        ...panel,
        portrait: { ...panel.portrait, title },
        asked: new Set(panels.flatMap(({ asked }) => [...asked])),
        marks: panels.flatMap(({ marks }) => marks),
      };
    }),
  );
}
