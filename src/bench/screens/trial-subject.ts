import {
  type BleedMake,
  fittedBleed,
  withBleed,
} from '../../circuit/catalog/modifications/fitted-bleed.ts';
import { modifications } from '../../circuit/catalog/modifications/index.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import type { Part, Pot } from '../../circuit/parts/part.ts';
import { expectedValue } from '../../circuit/parts/value.ts';
import { farads, ohms } from '../../circuit/units.ts';
import { formatFarads, formatOhms } from '../../readings/entry.ts';
import { enterFarads, enterOhms } from '../../readings/expression.ts';
import { nearestPreferred } from '../../readings/preferred.ts';
import { called } from '../../words/called.ts';
import { tryingWords } from '../../words/en/trials.ts';

/** Something whose value or kind can be tried. */
export interface Subject {
  readonly key: string;
  readonly title: string;
  readonly is: 'pot' | 'capacitor' | 'resistor' | 'bleed' | 'bass-cut' | 'cable';
  /** The part or pot it is about; empty for the cable. */
  readonly part: string;
}

/** What is typed and chosen for a subject. */
export interface Tried {
  readonly ohms: string;
  readonly farads: string;
  readonly taper: Pot['taper'];
  readonly make: BleedMake;
}

export type TriedField = 'ohms' | 'farads';
export interface TriedFault {
  readonly field: TriedField;
  readonly sentence: string;
}

/** 100 pF a metre: the lower end of the trade's 100 to 330 (field figure). */
export const CABLE_PER_METRE = 100e-12;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const bassCut = modifications.find(({ id }) => id === 'bass-cut');

/** All that can be tried on this guitar: kinds first, then every part with a value, then the cable. */
export function subjectsOf(circuit: Circuit): readonly Subject[] {
  const bleeds = circuit.parts.flatMap((part): Subject[] =>
    part.kind === 'pot' && part.role === 'volume'
      ? [
          {
            key: `bleed:${part.id}`,
            title: tryingWords().trebleBleedOfThePart(part.title),
            is: 'bleed',
            part: part.id,
          },
        ]
      : [],
  );
  const inBleeds = new Set(
    bleeds.flatMap(({ part }) => {
      const { capacitor, resistor } = fittedBleed(circuit, part);
      return [capacitor?.id, resistor?.id];
    }),
  );
  const parts = circuit.parts.flatMap((part): Subject[] =>
    (part.kind === 'pot' || part.kind === 'capacitor' || part.kind === 'resistor') &&
    !inBleeds.has(part.id)
      ? [{ key: part.id, title: capital(called(part.title)), is: part.kind, part: part.id }]
      : [],
  );
  const hasCut = circuit.parts.some(({ id }) => id === 'bassCut');
  const cut: Subject[] = hasCut
    ? []
    : [{ key: 'bass-cut', title: tryingWords().bassCutOfTheWholeGuitar, is: 'bass-cut', part: '' }];
  return [
    ...bleeds,
    ...parts,
    ...cut,
    { key: 'cable', title: tryingWords().lengthOfTheCable, is: 'cable', part: '' },
  ];
}

/** What a subject is now, as text to edit. */
export function asItIs(circuit: Circuit, subject: Subject): Tried {
  const blank: Tried = { ohms: '100k', farads: '1n', taper: 'audio', make: 'none' };
  const part = circuit.parts.find(({ id }) => id === subject.part);
  switch (subject.is) {
    case 'bleed': {
      const { make, capacitor, resistor } = fittedBleed(circuit, subject.part);
      return {
        ...blank,
        make,
        ...(capacitor && { farads: faradsText(capacitor) }),
        ...(resistor && { ohms: ohmsText(resistor) }),
      };
    }
    case 'pot':
      return part?.kind === 'pot' ? { ...blank, ohms: ohmsText(part), taper: part.taper } : blank;
    case 'capacitor':
      return part?.kind === 'capacitor' ? { ...blank, farads: faradsText(part) } : blank;
    case 'resistor':
      return part?.kind === 'resistor' ? { ...blank, ohms: ohmsText(part) } : blank;
    case 'bass-cut':
      return { ...blank, farads: '3.3n' };
    case 'cable':
      return blank;
  }
}

const ohmsText = (part: Extract<Part, { kind: 'pot' | 'resistor' }>): string =>
  formatOhms(expectedValue(part.ohms), 4);
const faradsText = (part: Extract<Part, { kind: 'capacitor' }>): string =>
  formatFarads(expectedValue(part.farads), 4);

/** Which values a subject needs as it is chosen now. */
export function fieldsOf(subject: Subject, { make }: Tried): readonly TriedField[] {
  switch (subject.is) {
    case 'bleed':
      return make === 'none' ? [] : make === 'alone' ? ['farads'] : ['farads', 'ohms'];
    case 'pot':
    case 'resistor':
      return ['ohms'];
    case 'capacitor':
    case 'bass-cut':
      return ['farads'];
    case 'cable':
      return [];
  }
}

/** Values that cannot be bought: the next ones of the series above and below. Empty where it can, and for pots, which are in no series. */
export async function offersFor(
  subject: Subject,
  tried: Tried,
  field: TriedField,
): Promise<readonly string[]> {
  if (subject.is === 'pot') return [];
  const value = await amountIn(tried, field);
  if (typeof value !== 'number') return [];
  const near = nearestPreferred(value, field === 'farads' ? 'E12' : 'E24');
  if (near.length === 1) return [];
  return near.map((one) =>
    field === 'farads' ? formatFarads(farads(one), 4) : formatOhms(ohms(one), 4),
  );
}

/** Ohms or farads above zero, or the sentence why not. */
async function amountIn(tried: Tried, field: TriedField): Promise<number | string> {
  const entry = field === 'ohms' ? await enterOhms(tried.ohms) : await enterFarads(tried.farads);
  if (!entry.ok) return entry.sentence;
  const value = 'ohms' in entry ? entry.ohms : entry.farads;
  if (typeof value !== 'number') return tryingWords().aNumberWithItsUnitIsNeeded;
  return value > 0 ? value : tryingWords().aValueAboveZeroIsNeeded;
}

/** The guitar with what is tried in it, or what is wrong with a value. */
export async function triedCircuit(
  circuit: Circuit,
  subject: Subject,
  tried: Tried,
): Promise<{ readonly circuit: Circuit } | { readonly faults: readonly TriedFault[] }> {
  const faults: TriedFault[] = [];
  const values = { ohms: 100e3, farads: 1e-9 };
  for (const field of fieldsOf(subject, tried)) {
    const value = await amountIn(tried, field);
    if (typeof value === 'string') faults.push({ field, sentence: value });
    else values[field] = value;
  }
  if (faults.length > 0) return { faults };
  // Text rounds, and a measured value is worth more: what nobody changed stays as it is.
  const own = asItIs(circuit, subject);
  const same = tried.taper === own.taper && tried.make === own.make;
  if (
    same &&
    subject.is !== 'bass-cut' &&
    fieldsOf(subject, tried).every((at) => tried[at] === own[at])
  )
    return { circuit };
  return { circuit: changed(circuit, subject, tried, values) };
}

function changed(
  circuit: Circuit,
  subject: Subject,
  tried: Tried,
  values: { readonly ohms: number; readonly farads: number },
): Circuit {
  const part = circuit.parts.find(({ id }) => id === subject.part);
  const track = ohms(values.ohms);
  const size = farads(values.farads);
  const withPart = (made: Circuit, id: string, to: (part: Part) => Part): Circuit => ({
    ...made,
    parts: made.parts.map((one) => (one.id === id ? to(one) : one)),
  });
  switch (subject.is) {
    case 'bleed':
      return part
        ? withBleed(
            circuit,
            { id: part.id, title: called(part.title) },
            { make: tried.make, farads: size, ohms: track },
          )
        : circuit;
    case 'bass-cut': {
      if (!bassCut) return circuit;
      const made = bassCut.apply(
        circuit,
        { id: 'jack', title: tryingWords().wholeGuitar },
        { carrier: 'fixed' },
      );
      return withPart(made, 'bassCut', (one) =>
        one.kind === 'capacitor' ? { ...one, farads: { ...one.farads, nominal: size } } : one,
      );
    }
    case 'cable':
      return circuit;
    default:
      // What was measured was the other part.
      return withPart(circuit, subject.part, (one) => {
        if (one.kind === 'pot')
          return {
            ...one,
            taper: tried.taper,
            ohms: { nominal: track, tolerance: one.ohms.tolerance },
          };
        if (one.kind === 'resistor')
          return { ...one, ohms: { nominal: track, tolerance: one.ohms.tolerance } };
        if (one.kind === 'capacitor')
          return { ...one, farads: { nominal: size, tolerance: one.farads.tolerance } };
        return one;
      });
  }
}
