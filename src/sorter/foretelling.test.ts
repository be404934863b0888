import { expect, it } from 'vitest';
import { layoutOf } from '../circuit/netlist.ts';
import { circuitOf, type SeenPickup } from '../circuit/seen-pickup.ts';
import { Predictor } from '../diagnosis/predictor.ts';
import { asksOf } from './asks.ts';
import { candidatesOf } from './candidates.ts';
import { PickupPredictor, sharedSizes } from './foretelling.ts';
import { lead, meter } from './ideal.fixture.ts';

const wires = (...names: string[]) => names.map((name) => lead(name));

it.each<[string, SeenPickup]>([
  ['one coil', { coils: 1, leads: wires('p', 'q', 'r'), plate: true, cover: false }],
  [
    'two coils',
    {
      coils: 2,
      leads: [...wires('p', 'q', 'r'), lead('s', 'bare')],
      plate: true,
      cover: false,
    },
  ],
])('what candidates of one build share is what each of them predicts by itself: %s', (_, seen) => {
  const layout = layoutOf(circuitOf(seen));
  const shared = new PickupPredictor(layout, meter);
  const each = new Predictor(layout, meter, sharedSizes(layout, meter));
  const words = new Set<string>();
  // One in thirteen of some hundreds, so that every build comes up.
  const some = candidatesOf(seen, layout).filter((_, at) => at % 13 === 0);
  for (const candidate of some)
    for (const ask of asksOf(seen)) {
      const [found] = shared.predict(candidate, ask);
      const [expected] = each.predict(candidate, ask);
      words.add(expected?.type ?? '');
      if (found?.type === 'choice' && expected?.type === 'choice') {
        // A swing keeps its chances; across the neighbour alone some of `nothing` goes to either sign.
        const [most] = Object.entries(found.chances).sort((x, y) => y[1] - x[1])[0] ?? [''];
        const [own] = Object.entries(expected.chances).sort((x, y) => y[1] - x[1])[0] ?? [''];
        expect(most).toBe(own);
      } else if (found?.type === 'level' && expected?.type === 'level') {
        expect(found.mean).toBeCloseTo(expected.mean, 6);
        expect([...found.slopes]).toEqual(
          [...expected.slopes].map((slope) => expect.closeTo(slope, 6)),
        );
      } else if (found?.type === 'threshold' && expected?.type === 'threshold')
        expect(found.ohms).toBeCloseTo(expected.ohms, 6);
      else expect(found).toEqual(expected);
    }
  expect([...words].sort()).toEqual(['choice', 'level', 'over', 'threshold']);
});
