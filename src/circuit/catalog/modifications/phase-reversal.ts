import type { Circuit, Lead } from '../../circuit.ts';
import { addSwitch, isFixed } from './carriers.ts';
import { Draft } from './draft.ts';
import type { Chosen, Place } from './modification.ts';

/** Exchanges two leads, for good or by a two-pole switch between them and the lugs they had. */
export function reversed(
  circuit: Circuit,
  [one, other]: readonly [Lead, Lead],
  chosen: Chosen,
  what: { readonly id: string; readonly title: string },
): Circuit {
  const draft = new Draft(circuit);
  if (isFixed(chosen)) {
    draft.land(one.id, other.to);
    draft.land(other.id, one.to);
    return draft.done();
  }
  const { lug } = addSwitch(draft, circuit, chosen, {
    id: `${what.id}Phase`,
    title: `phase switch of the ${what.title}`,
    positions: ['in phase', 'reversed'],
    poles: 2,
  });
  draft.land(one.id, lug('AC'));
  draft.land(other.id, lug('BC'));
  draft.join(`${what.id}PhaseHot`, lug('A1'), one.to);
  draft.join(`${what.id}PhaseCold`, lug('B1'), other.to);
  draft.join(`${what.id}PhaseCross`, lug('A2'), lug('B1'));
  draft.join(`${what.id}PhaseCrossBack`, lug('B2'), lug('A1'));
  return draft.done();
}

export const reversalNamed = ({ title }: Place, chosen: Chosen): string =>
  isFixed(chosen) ? `the ${title} reversed` : `a phase switch on the ${title}`;
