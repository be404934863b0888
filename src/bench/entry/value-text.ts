import type { Circuit } from '../../circuit/circuit.ts';
import { isInLine } from '../../circuit/in-room.ts';
import type { Part, PartId, Value } from '../../circuit/parts/part.ts';
import { type Celsius, celsius } from '../../circuit/units.ts';
import { formatFarads, formatOhms } from '../../readings/entry.ts';
import { enterFarads, enterOhms } from '../../readings/expression.ts';
import { called } from '../../words/called.ts';
import { entryWords } from '../../words/en/entry.ts';

/** A part whose value is printed on it, with the value as text to edit. */
export interface ValueRow {
  readonly part: PartId;
  readonly title: string;
  readonly unit: 'ohm' | 'farad';
  readonly nominal: string;
  readonly tolerance: string;
  /** Empty where nobody has measured it out of circuit; OL where the meter showed open. */
  readonly measured: string;
  /** For coils: degrees Celsius when it was measured; empty where nobody noted it. */
  readonly measuredAt?: string;
  /** What was stored counts against the part. */
  readonly odd: boolean;
}

export interface ValueFault {
  readonly part: PartId;
  readonly field: 'nominal' | 'measured' | 'measuredAt';
  readonly sentence: string;
}

const OPEN = 'OL';
export const warmthText = (at: Celsius | undefined): string => (at === undefined ? '' : String(at));

/** "24", "24 °C", "23,5"; undefined for nothing, a sentence for anything else. */
export function warmthFrom(text: string): Celsius | undefined | string {
  const plain = text.trim();
  if (plain === '') return undefined;
  const found = /^(-?\d{1,3}(?:[.,]\d+)?)\s*(?:°?\s*C)?$/i.exec(plain);
  const degrees = Number(found?.[1]?.replace(',', '.'));
  if (!found || !(degrees >= -30 && degrees <= 60))
    return entryWords().plainIsNoRoomTypeDegreesCelsius(plain);
  return celsius(degrees);
}

const shares: readonly number[] = [0.01, 0.05, 0.1, 0.15, 0.2, 0.3];

/** Tolerances to choose from, with the part's own among them. */
export const toleranceTexts = (own: string): readonly string[] => {
  const all = new Set([...shares.map((share) => String(share)), own]);
  return [...all].sort((a, b) => Number(a) - Number(b));
};

export function valueRows(circuit: Circuit): readonly ValueRow[] {
  return circuit.parts.flatMap((part): ValueRow[] => {
    const value = valueIn(part);
    if (!value) return [];
    const text = (amount: number): string =>
      value.unit === 'ohm'
        ? formatOhms(amount as Parameters<typeof formatOhms>[0], 4)
        : formatFarads(amount as Parameters<typeof formatFarads>[0], 4);
    return [
      {
        part: part.id,
        title: called(part.title),
        unit: value.unit,
        nominal: text(value.of.nominal),
        tolerance: String(value.of.tolerance),
        measured: value.of.measuredOpen
          ? OPEN
          : value.of.measured === undefined
            ? ''
            : text(value.of.measured),
        ...(part.kind === 'coil' && { measuredAt: warmthText(value.of.measuredAt) }),
        odd: !isInLine(part),
      },
    ];
  });
}

/** Rows of a circuit that was changed, with what was typed before the change wherever that part is still the same. */
export function carried(
  typed: readonly ValueRow[],
  before: readonly ValueRow[],
  after: readonly ValueRow[],
): readonly ValueRow[] {
  const rowIn = (rows: readonly ValueRow[], part: PartId) => rows.find((row) => row.part === part);
  return after.map((row) => {
    const same = rowIn(before, row.part)?.nominal === row.nominal;
    return (same && rowIn(typed, row.part)) || row;
  });
}

/** The circuit with the values of the rows, or what is wrong with them: nothing is dropped in silence. */
export async function withValues(
  circuit: Circuit,
  rows: readonly ValueRow[],
): Promise<{ readonly circuit: Circuit } | { readonly faults: readonly ValueFault[] }> {
  const faults: ValueFault[] = [];
  const untouched = new Map(valueRows(circuit).map((row) => [row.part, row]));
  const read = async (
    row: ValueRow,
    field: 'nominal' | 'measured',
    own: number | 'open' | undefined,
  ): Promise<number | 'open' | undefined> => {
    // Text rounds: a value that nobody edited stays as it is, to the last figure.
    if (row[field] === untouched.get(row.part)?.[field]) return own;
    const fault = (sentence: string) => {
      faults.push({ part: row.part, field, sentence: `${row.title}: ${sentence}` });
      return undefined;
    };
    const entry =
      row.unit === 'ohm'
        ? amountFrom(await enterOhms(row[field]))
        : amountFrom(await enterFarads(row[field]));
    if (entry === 'open' && field === 'measured') return entry;
    if (typeof entry !== 'number')
      return fault(entry === 'open' ? entryWords().aNumberWithItsUnitIsNeeded : entry.sentence);
    return entry > 0 ? entry : fault(entryWords().aValueAboveZeroIsNeeded);
  };
  const withValue = async (part: Part): Promise<Part> => {
    const row = rows.find((one) => one.part === part.id);
    const value = valueIn(part);
    if (!row || !value) return part;
    const nominal = await read(row, 'nominal', value.of.nominal);
    const own = value.of.measuredOpen ? 'open' : value.of.measured;
    const measured = row.measured.trim() === '' ? undefined : await read(row, 'measured', own);
    const at = warmthFrom(row.measuredAt ?? '');
    if (typeof at === 'string')
      faults.push({ part: row.part, field: 'measuredAt', sentence: `${row.title}: ${at}` });
    if (nominal === undefined) return part;
    const next = {
      nominal,
      tolerance: Number(row.tolerance),
      ...(measured === 'open' && { measuredOpen: true }),
      ...(typeof measured === 'number' && { measured }),
      ...(typeof measured === 'number' && typeof at === 'number' && { measuredAt: at }),
    };
    return { ...part, [value.unit === 'ohm' ? 'ohms' : 'farads']: next } as Part;
  };
  // One after the other, so that the first fault named is the uppermost.
  const parts: Part[] = [];
  for (const part of circuit.parts) parts.push(await withValue(part));
  return faults.length > 0 ? { faults } : { circuit: { ...circuit, parts } };
}

type Entered = Awaited<ReturnType<typeof enterOhms> | ReturnType<typeof enterFarads>>;

function amountFrom(entry: Entered): number | 'open' | { readonly sentence: string } {
  if (!entry.ok) return entry;
  const value = 'ohms' in entry ? entry.ohms : entry.farads;
  if (typeof value === 'number' || value === 'open') return value;
  return { sentence: entryWords().aNumberWithItsUnitIsNeeded };
}

/** Parts that are out of line now and were not before, each in a sentence: as likely a slip of the finger as a bad part. */
export function newlyOdd(before: Circuit, after: Circuit): readonly string[] {
  const known = new Map(before.parts.map((part) => [part.id, JSON.stringify(part)]));
  return after.parts.flatMap((part) => {
    if (isInLine(part) || known.get(part.id) === JSON.stringify(part)) return [];
    const row = valueRows({ ...after, parts: [part] })[0];
    return row
      ? [entryWords().rowMeasuredMeasuredNominal(row.title, row.measured, row.nominal)]
      : [];
  });
}

function valueIn(part: Part): { unit: ValueRow['unit']; of: Value<number & {}> } | null {
  if (part.kind === 'coil' || part.kind === 'pot' || part.kind === 'resistor')
    return { unit: 'ohm', of: part.ohms };
  return part.kind === 'capacitor' ? { unit: 'farad', of: part.farads } : null;
}
