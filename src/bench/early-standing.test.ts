import { expect, it, vi } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { ohms } from '../circuit/units.ts';
import type { Evidence, Standing } from '../diagnosis/assessment.ts';
import { earlyStanding } from './early-standing.ts';
import type { Ports } from './ports.ts';

const evidence: Evidence = {
  circuit: startingWirings[0]!.build(),
  meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) },
  access: 'open',
  readings: [],
  refused: [],
  repairs: [],
};
const standing = (liveSuspects: number) => ({ liveSuspects }) as Standing;

function asked(answers: readonly (() => Promise<Standing>)[]) {
  const stand = vi.fn();
  for (const answer of answers) stand.mockImplementationOnce(answer);
  return { stand, early: earlyStanding({ engine: { stand } as unknown as Ports['engine'] }) };
}

it('asks once where what is stored is what was told, by what it says and not by which object it is', async () => {
  const { stand, early } = asked([async () => standing(1)]);
  early.begin(evidence);
  expect(await early.of(structuredClone(evidence))).toEqual(standing(1));
  expect(stand).toHaveBeenCalledTimes(1);
});

it('asks again where another tab added something while it was stored, and for the next act', async () => {
  const { stand, early } = asked([
    async () => standing(1),
    async () => standing(2),
    async () => standing(3),
  ]);
  early.begin(evidence);
  expect(await early.of({ ...evidence, access: 'closed' })).toEqual(standing(2));
  expect(await early.of(evidence)).toEqual(standing(3));
  expect(stand).toHaveBeenCalledTimes(3);
});

it('tells whoever waits for it that the engine failed, and nobody else', async () => {
  const { early } = asked([() => Promise.reject(new Error('made up'))]);
  early.begin(evidence);
  await expect(early.of(evidence)).rejects.toThrow('made up');
});
