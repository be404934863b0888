import { checkSetting } from '../circuit/check.ts';
import type { Circuit } from '../circuit/circuit.ts';
import type { Edit } from '../circuit/edit.ts';
import { nodeAt } from '../circuit/netlist.ts';
import { settingKey } from '../circuit/setting.ts';
import { farads, type Ohms, ohms } from '../circuit/units.ts';
import { predict } from '../readings/index.ts';
import { likeliestWord } from '../readings/likeliest.ts';
import type { Prediction } from '../readings/prediction.ts';
import type { Ask, AskOf, Meter, Seen, SeenOf } from '../readings/reading.ts';
import { unknownsOf } from '../readings/unknowns.ts';
import { View } from '../readings/view.ts';
import { Dice } from './dice.ts';
import { type HiddenGuitar, hiddenGuitar } from './hidden-guitar.ts';

/** A job on a practice guitar, as far as it is known before any reading. */
export interface PracticeStart {
  readonly circuit: Circuit;
  readonly meter: Meter;
}

export interface PracticeQuestion {
  readonly seed: string;
  readonly ask: Ask;
  /** Keys of the repairs done so far. */
  readonly repairs: readonly string[];
  /** How often this was read before: a meter flickers. */
  readonly before: number;
}

export interface PracticeReading {
  readonly seen: Seen;
  /** As it stands in the display: figure and unit, or the over-range sign. Absent where no number is read. */
  readonly display?: string;
}

export interface PracticeFault {
  readonly sentence: string;
  /** The repair that mends it. */
  readonly title: string;
  /** Whether that repair was done. */
  readonly found: boolean;
}

export function practiceStart(seed: string): PracticeStart {
  const { intended, meter } = hiddenGuitar(seed);
  return { circuit: intended, meter: meter.known };
}

export function practiceFault({
  seed,
  repairs,
}: Pick<PracticeQuestion, 'seed' | 'repairs'>): PracticeFault {
  const { fault } = hiddenGuitar(seed);
  return {
    sentence: fault.sentence,
    title: fault.remedy.title,
    found: repairs.includes(fault.remedy.key),
  };
}

/** What the practice guitar shows. Throws CircuitError where the ask names what this guitar does not have. */
export function practiceReading({ seed, ask, repairs, before }: PracticeQuestion): PracticeReading {
  const guitar = hiddenGuitar(seed);
  checkSetting(guitar.intended, ask.setting);
  const edits = repairs.includes(guitar.fault.remedy.key) ? [] : guitar.edits;
  const { setting, ...rest } = ask;
  const dice = new Dice(`${seed} ${JSON.stringify(rest)} ${settingKey(setting)} ${before}`);
  switch (ask.kind) {
    case 'ohms':
      return shown(guitar, between(guitar, ask, edits), dice);
    case 'beep':
      return { seen: { kind: 'beep', beeps: guitar.meter.beeps(between(guitar, ask, edits)) } };
    case 'turn':
      return turned(guitar, ask, edits, dice);
    case 'farads':
      return capacitance(guitar, ask, edits, dice);
    case 'look':
      return { seen: looked(predictions(guitar, ask, edits)) };
    case 'hum':
      return { seen: { kind: 'hum', decibels: Number(likeliest(guitar, ask, edits)) } };
    default:
      return {
        seen: { kind: ask.kind, [wordField[ask.kind]]: likeliest(guitar, ask, edits) } as Seen,
      };
  }
}

/** Where each of these keeps its word. */
const wordField = {
  flex: 'how',
  tap: 'swing',
  listen: 'heard',
  touch: 'hum',
  pole: 'pole',
} as const;

function between(
  { real }: HiddenGuitar,
  { red, black, setting }: AskOf<'ohms' | 'beep'>,
  edits: readonly Edit[],
): number {
  const view = new View(real, setting, edits);
  return view.dc.resistance(nodeAt(real, red), nodeAt(real, black));
}

/** What a guitar with these very values is foretold to show. */
function predictions(
  { real, meter }: HiddenGuitar,
  ask: Ask,
  edits: readonly Edit[],
): readonly Prediction[] {
  const { known } = meter;
  const instrument = { meter: known, unknowns: unknownsOf(real, known) };
  return predict(new View(real, ask.setting, edits), ask, instrument);
}

function wordOf(list: readonly Prediction[]): string {
  for (const prediction of list)
    if (prediction.type === 'choice') return likeliestWord(prediction.chances);
  throw new Error('This kind of reading is not answered by a word.');
}

/** Ears and eyes of practice make no mistakes. */
const likeliest = (guitar: HiddenGuitar, ask: Ask, edits: readonly Edit[]): string =>
  wordOf(predictions(guitar, ask, edits));

/** A bad joint looks good to every third person; here it shows. */
function looked(list: readonly Prediction[]): SeenOf<'look'> {
  const [choice] = list;
  if (choice?.type !== 'choice') throw new Error('A look is foretold by its words.');
  const { good = 0, ...bad } = choice.chances;
  const how = good > 0.5 ? 'good' : likeliestWord(bad);
  return { kind: 'look', how: how as SeenOf<'look'>['how'] };
}

function shown({ meter }: HiddenGuitar, real: number, dice: Dice): PracticeReading {
  const figure = meter.figure(real, dice);
  if (figure === 'open') return { seen: { kind: 'ohms', ohms: 'open' }, display: 'OL' };
  return {
    seen: { kind: 'ohms', ohms: ohms(figure.counts * figure.step) },
    display: displayOf(figure),
  };
}

/** "7.39 kΩ" in a range of 20 k, "0.4 Ω" in one of 200: the decimals are those of a count. */
function displayOf({ counts, step, full }: { counts: number; step: number; full: number }): string {
  const [size, unit] = full >= 1e6 ? [1e6, 'MΩ'] : full >= 1e3 ? [1e3, 'kΩ'] : [1, 'Ω'];
  const decimals = Math.max(0, Math.round(-Math.log10(step / size)));
  return `${((counts * step) / size).toFixed(decimals)} ${unit}`;
}

function turned(
  guitar: HiddenGuitar,
  ask: AskOf<'turn'>,
  edits: readonly Edit[],
  dice: Dice,
): PracticeReading {
  const list = predictions(guitar, ask, edits);
  const how = wordOf(list) as SeenOf<'turn'>['how'];
  const level = list.find((one) => one.type === 'level');
  const real = level ? level.ohms - guitar.meter.known.leads : Number.POSITIVE_INFINITY;
  const { seen, display } = shown(guitar, real, dice);
  const peak = (seen as SeenOf<'ohms'>).ohms as Ohms | 'open';
  return { seen: { kind: 'turn', how, peak }, ...(display !== undefined && { display }) };
}

function capacitance(
  guitar: HiddenGuitar,
  ask: AskOf<'farads'>,
  edits: readonly Edit[],
  dice: Dice,
): PracticeReading {
  const list = predictions(guitar, ask, edits);
  const what = wordOf(list);
  if (what === 'open' || what === 'short') return { seen: { kind: 'farads', farads: what } };
  const level = list.find((one) => one.type === 'level');
  if (!level) throw new Error('A capacitance is foretold by its size.');
  const value = Math.exp(level.mean) * 1e-12 * (1 + dice.between(-0.01, 0.01));
  const count = 10 ** (Math.floor(Math.log10(value)) - 2);
  return {
    seen: { kind: 'farads', farads: farads(Math.round(value / count) * count) },
    display: `${(value * 1e9).toPrecision(3)} nF`,
  };
}
