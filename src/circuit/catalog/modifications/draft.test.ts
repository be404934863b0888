import { expect, it } from 'vitest';
import { twoPickupsSharedControls } from '../two-pickups-shared-controls.ts';
import { Draft } from './draft.ts';

const base = twoPickupsSharedControls();
const lead = (circuit: typeof base, id: string) => circuit.leads.find((one) => one.id === id);

it('gives a new thing the lowest free number, among parts, leads and pickups alike', () => {
  const draft = new Draft(base);
  expect([
    draft.fresh('new'),
    draft.fresh('volume'),
    draft.fresh('jackHot'),
    draft.fresh('neckPickup'),
  ]).toEqual(['new', 'volume2', 'jackHot2', 'neckPickup2']);
  const splice = { kind: 'splice', id: 'volume', title: 'joint' } as const;
  expect([draft.add(splice).id, draft.add(splice).id]).toEqual(['volume2', 'volume3']);
  expect(draft.fresh('x'.repeat(60)).length).toBeLessThanOrEqual(40);
});

it('moves leads, one end or all ends of a lug, and exchanges two lugs', () => {
  const draft = new Draft(base);
  draft.land('neckHot', 'volume.2');
  draft.start('jackHot', 'tone.3');
  draft.move('volume.3', 'tone.3');
  draft.exchange('tone.1', 'tone.2');
  const made = draft.done();
  expect(lead(made, 'neckHot')?.to).toBe('volume.2');
  expect(lead(made, 'jackHot')?.from).toBe('tone.3');
  expect(lead(made, 'selectorOut')?.to).toBe('tone.3');
  expect(lead(made, 'capToneLeg')?.to).toBe('tone.1');
  expect(lead(made, 'toneGround')?.from).toBe('tone.2');
  expect(lead(base, 'neckHot')?.to).toBe('selector.A');
});
