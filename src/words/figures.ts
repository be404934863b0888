import { tongue } from './area.ts';

const formats = new Map<string, Intl.NumberFormat>();

/** A figure with the decimal sign of the person's locale and no sign between thousands: "7.85", "7,85". */
export function figure(value: number, options: Intl.NumberFormatOptions = {}): string {
  const { locale } = tongue();
  const key = `${locale} ${JSON.stringify(options)}`;
  let format = formats.get(key);
  if (!format) {
    format = new Intl.NumberFormat(locale, {
      numberingSystem: 'latn',
      useGrouping: false,
      maximumFractionDigits: 12,
      ...options,
    });
    formats.set(key, format);
  }
  return format.format(value);
}

/** With just so many decimals, as `toFixed`. */
export const fixed = (value: number, decimals: number): string =>
  figure(value, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });

/** Between whole and parts: "." or ",". */
export const decimalSign = (): string => figure(1.5).charAt(1);

/** A day as the person writes it: "12/31/2026", "31-12-2026". */
export const dateText = (moment: string): string =>
  new Date(moment).toLocaleDateString(tongue().locale);
