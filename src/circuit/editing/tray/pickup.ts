import { coil, type LeadRow, leads } from '../../catalog/build.ts';
import { Draft } from '../../catalog/modifications/draft.ts';
import { type Choice, type Chosen, optionOf } from '../../catalog/modifications/modification.ts';
import type { Circuit } from '../../circuit.ts';
import type { Coil, Metal } from '../../parts/part.ts';
import { henries } from '../../units.ts';
import type { TrayItem } from './item.ts';
import { freeTitle } from './names.ts';

const sides = ['bridge', 'neck', 'middle'] as const;

/** Where it sits; a side that has its pickup comes after those that have none. */
function placeChoice(circuit: Circuit): Choice {
  const taken = (side: string) =>
    circuit.pickups.some(({ title }) => title.toLowerCase() === `${side} pickup`);
  const free = sides.filter((side) => !taken(side));
  const named = [...free, 'another'].map((id) => ({ id, title: id }));
  return {
    id: 'place',
    title: 'Where it sits',
    options: named as unknown as Choice['options'],
  };
}

const metalChoice: Choice = {
  id: 'metal',
  title: 'Metal cover or base plate',
  options: [
    { id: 'none', title: 'none' },
    { id: 'own', title: 'on a bare lead of its own' },
    { id: 'cold', title: 'joined to the cold lead' },
  ],
};

/** Most two-coil pickups with four conductors bring a bare wire out as well. */
const bareFirst: Choice = {
  ...metalChoice,
  options: [
    metalChoice.options[1],
    metalChoice.options[2],
    metalChoice.options[0],
  ] as unknown as Choice['options'],
};

const leadsChoice: Choice = {
  id: 'leads',
  title: 'Leads of its coils',
  options: [
    { id: '4', title: 'four: both ends of each coil' },
    { id: '3', title: 'three: hot, cold, and where the coils meet' },
    { id: '2', title: 'two: hot and cold' },
  ],
};

/** Resistances and inductances as in the starting wirings (common practice, no source); set right afterwards. */
const single = { resistance: 6000, henries: henries(2.5) };
const half = { resistance: 4000, henries: henries(2.2) };

function titled(
  circuit: Circuit,
  chosen: Chosen,
): { readonly title: string; readonly stem: string } {
  const place = optionOf(placeChoice(circuit), chosen).id;
  const title = freeTitle(circuit, place === 'another' ? 'extra pickup' : `${place} pickup`);
  const number = /\d+$/.exec(title)?.[0] ?? '';
  return { title, stem: `${place === 'another' ? 'extra' : place}${number}` };
}

const plateOf = (id: string, title: string): Metal => ({
  kind: 'metal',
  id,
  title: `metal of the ${title}`,
  role: 'plate',
  outside: false,
});

/** One coil, one or two magnets; two leads, or three with a bare one. */
export const singleCoil: TrayItem = {
  id: 'single-coil',
  title: 'Pickup, one coil',
  choices: (circuit) => [placeChoice(circuit), metalChoice],
  make(circuit, chosen) {
    const { title, stem } = titled(circuit, chosen);
    const metal = optionOf(metalChoice, chosen).id;
    const draft = new Draft(circuit);
    const one = draft.add<Coil>(coil(`${stem}Coil`, title, { ...single, ends: 'eyelets' }));
    const plate = metal === 'none' ? null : draft.add(plateOf(`${stem}Plate`, title));
    const inner: LeadRow[] =
      plate && metal === 'cold'
        ? [[draft.fresh(`${stem}PlateLink`), 'pickup', `${plate.id}.metal`, `${one.id}.start`]]
        : [];
    return {
      parts: [one, ...(plate ? [plate] : [])],
      leads: leads(inner),
      pickup: {
        id: draft.fresh(`${stem}Pickup`),
        title,
        coils: [one.id],
        ...(plate && { plate: plate.id }),
      },
    };
  },
};

/** Two coils of opposite winding and magnet, two to five leads with the bare one. */
export const twoCoils: TrayItem = {
  id: 'two-coils',
  title: 'Pickup, two coils',
  choices: (circuit, chosen) => [
    placeChoice(circuit),
    leadsChoice,
    optionOf(leadsChoice, chosen).id === '2' ? metalChoice : bareFirst,
  ],
  make(circuit, chosen) {
    const { title, stem } = titled(circuit, chosen);
    const out = optionOf(leadsChoice, chosen).id;
    const metal = optionOf(out === '2' ? metalChoice : bareFirst, chosen).id;
    const draft = new Draft(circuit);
    const screw = draft.add<Coil>(
      coil(`${stem}Screw`, `${title}'s screw coil`, { ...half, place: 'screw' }),
    );
    const slug = draft.add<Coil>(
      coil(`${stem}Slug`, `${title}'s slug coil`, {
        ...half,
        place: 'slug',
        winding: -1,
        magnet: -1,
      }),
    );
    const plate = metal === 'none' ? null : draft.add(plateOf(`${stem}Plate`, title));
    const inner: LeadRow[] = [];
    if (out !== '4')
      inner.push([
        draft.fresh(`${stem}FactoryJoint`),
        'pickup',
        `${slug.id}.start`,
        `${screw.id}.finish`,
      ]);
    if (plate && metal === 'cold')
      inner.push([
        draft.fresh(`${stem}PlateLink`),
        'pickup',
        `${plate.id}.metal`,
        `${screw.id}.start`,
      ]);
    return {
      parts: [screw, slug, ...(plate ? [plate] : [])],
      leads: leads(inner),
      pickup: {
        id: draft.fresh(`${stem}Pickup`),
        title,
        coils: [screw.id, slug.id],
        ...(plate && { plate: plate.id }),
      },
    };
  },
};
