import type { Farads, Ohms } from '../circuit/units.ts';
import { readingWords } from '../words/en/readings.ts';
import { figure } from '../words/figures.ts';

const OHM_STEPS = [
  { size: 1, unit: 'Ω' },
  { size: 1e3, unit: 'kΩ' },
  { size: 1e6, unit: 'MΩ' },
  { size: 1e9, unit: 'GΩ' },
] as const;

const FARAD_STEPS = [
  { size: 1e-12, unit: 'pF' },
  { size: 1e-9, unit: 'nF' },
  { size: 1e-6, unit: 'µF' },
] as const;

/**
 * "7.42 kΩ", "430 kΩ", "0.3 Ω", "OL (open)", with the decimal sign of the locale: always with its unit, at most `digits` significant
 * figures, never an exponent. The default of three suits computed values; a meter of 4000 counts
 * or more shows four.
 */
export function formatOhms(value: Ohms | 'open', digits = 3): string {
  if (value === 'open') return readingWords().olOpen;
  return inSteps(value, OHM_STEPS, digits);
}

/** "22 nF", "470 pF", "0.1 pF", "open", "short". */
export function formatFarads(value: Farads | 'open' | 'short', digits = 3): string {
  if (value === 'open' || value === 'short') return readingWords().farads[value];
  return inSteps(value, FARAD_STEPS, digits);
}

function inSteps(
  value: number,
  steps: readonly { readonly size: number; readonly unit: string }[],
  digits: number,
): string {
  // Rounded first, so that 999.9 ohm becomes 1 kΩ and not 1000 Ω.
  const rounded = Number(value.toPrecision(digits));
  let step = steps[0]!;
  for (const next of steps) if (Math.abs(rounded) >= next.size * (1 - 1e-9)) step = next;
  const shown = figure(rounded / step.size, { maximumSignificantDigits: digits });
  return readingWords().amount(shown, step.unit);
}
