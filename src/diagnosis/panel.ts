import type { Prediction } from '../readings/prediction.ts';
import type { Ask } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import { agreement, type SignAsk } from './first-sign.ts';
import type { Group } from './groups.ts';
import { mixed, type Signs } from './known-signs.ts';
import { againOf, type Before } from './measured-again.ts';
import type { Member } from './players.ts';
import type { Foretold, Predictor } from './predictor.ts';
import type { Foreseen } from './worth.ts';

/** The heaviest hypotheses, each with its group's place. */
export function panelOf(groups: readonly Group[], count: number): readonly Member[] {
  const all = groups.flatMap(({ members }, group) =>
    members.map((weighed) => ({ weighed, group })),
  );
  all.sort((x, y) => y.weighed.probability - x.weighed.probability);
  let mass = 0;
  const total = all.reduce((sum, one) => sum + one.weighed.probability, 0);
  const panel: Member[] = [];
  for (const one of all) {
    if (panel.length >= count || mass > 0.998 * total) break;
    panel.push(one);
    mass += one.weighed.probability;
  }
  return panel;
}

export function massOf(panel: readonly Member[], groups: number): number[] {
  const mass = new Array<number>(groups).fill(0);
  for (const { weighed, group } of panel)
    mass[group] = (mass[group] as number) + weighed.probability;
  return mass;
}

/** The panel's predictions before what was learned is taken into account: members that predict the same and want the same repair are one. */
export function roughly(
  predictor: Predictor,
  panel: readonly Member[],
  groups: number,
  ask: Ask,
): readonly Foreseen[] {
  const key = askKey(ask);
  const merged = new Map<number, { weight: number; group: number; parts: Foreseen['parts'] }>();
  for (const { weighed, group } of panel) {
    const foretold = predictor.foretell(weighed.hypothesis, ask, key);
    const name = foretold.id * groups + group;
    const known = merged.get(name);
    if (known) known.weight += weighed.probability;
    else merged.set(name, { weight: weighed.probability, group, parts: partsOf(foretold) });
  }
  return [...merged.values()];
}

/** What a class of hypotheses foretells before any reading: the same objects each time, as their outcomes are laid out once. */
const parts = new WeakMap<Foretold, Foreseen['parts']>();

function partsOf(foretold: Foretold): Foreseen['parts'] {
  const known = parts.get(foretold);
  if (known) return known;
  const made = foretold.predictions.map((prediction, at) => ({
    prediction,
    shift: 0,
    variance: foretold.variances[at] as number,
  }));
  parts.set(foretold, made);
  return made;
}

/** What each of the panel foretells of a figure that was read before. */
export function again(
  predictor: Predictor,
  panel: readonly Member[],
  ask: Ask,
  figures: Before,
): readonly Foreseen[] {
  const key = askKey(ask);
  const found = new Map<number, Foreseen['parts']>();
  return panel.map(({ weighed: { hypothesis, probability }, group }) => {
    const { id, predictions, variances } = predictor.foretell(hypothesis, ask, key);
    const parts = found.get(id) ?? [
      {
        prediction: againOf(predictions[0] as Prediction, variances[0] as number, figures),
        shift: 0,
        variance: 0,
      },
    ];
    found.set(id, parts);
    return { weight: probability, group, parts };
  });
}

/** What two readings of a sign foretell together. */
export function together(
  predictor: Predictor,
  panel: readonly Member[],
  first: SignAsk,
  second: SignAsk,
): readonly Foreseen[] {
  const [one, other] = [askKey(first), askKey(second)];
  return panel.map(({ weighed: { hypothesis, probability }, group }) => ({
    weight: probability,
    group,
    parts: agreementOf(
      predictor.foretell(hypothesis, first, one),
      predictor.foretell(hypothesis, second, other),
    ),
  }));
}

const agreements = new WeakMap<Foretold, WeakMap<Foretold, Foreseen['parts']>>();

function agreementOf(first: Foretold, second: Foretold): Foreseen['parts'] {
  const beside = agreements.get(first) ?? new WeakMap<Foretold, Foreseen['parts']>();
  agreements.set(first, beside);
  const known = beside.get(second);
  if (known) return known;
  const prediction = agreement(first.predictions[0], second.predictions[0]);
  const made = [{ prediction, shift: 0, variance: 0 }];
  beside.set(second, made);
  return made;
}

/** What is foretold of one more sign by each of the panel, from where the earlier ones say that its guitar starts. */
export function signed(
  predictor: Predictor,
  panel: readonly Member[],
  signs: readonly Signs[],
  ask: Ask,
): readonly Foreseen[] {
  const key = askKey(ask);
  return panel.map(({ weighed: { hypothesis, probability }, group }, at) => ({
    weight: probability,
    group,
    parts: predictor.foretell(hypothesis, ask, key).predictions.map((one) => ({
      prediction: mixed(one, signs[at] as Signs),
      shift: 0,
      variance: 0,
    })),
  }));
}
