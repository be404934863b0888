import { pointTitle } from '../circuit/names.ts';
import type { Layout } from '../circuit/netlist.ts';
import type { Ohms } from '../circuit/units.ts';
import { readingWords } from '../words/en/readings.ts';
import { figure, fixed } from '../words/figures.ts';

/** Three significant figures and a unit; below 10 ohm one decimal, as the display shows. */
export function ohmsText(value: Ohms | 'open'): string {
  if (value === 'open') return readingWords().openOL;
  const scaled = (divisor: number, unit: string) => {
    const x = value / divisor;
    return readingWords().amount(fixed(x, x < 10 ? 2 : x < 100 ? 1 : 0), unit);
  };
  if (value >= 999.5e3) return scaled(1e6, 'MΩ');
  if (value >= 999.5) return scaled(1e3, 'kΩ');
  return readingWords().amount(fixed(value, value < 10 ? 1 : 0), 'Ω');
}

/** Always three figures: "22.0 nF". */
export const nanofaradsText = (nanofarads: number): string =>
  readingWords().amount(
    figure(nanofarads, { minimumSignificantDigits: 3, maximumSignificantDigits: 3 }),
    'nF',
  );

export const probesText = (layout: Layout, red: string, black: string): string =>
  readingWords().rOnPointBOnPoint2(pointTitle(layout, red), pointTitle(layout, black));
