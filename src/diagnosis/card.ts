import { checkCircuit, checkSetting } from '../circuit/check.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { isInLine } from '../circuit/in-room.ts';
import type { PartId } from '../circuit/parts/part.ts';
import type { Meter, Reading } from '../readings/reading.ts';
import { type CardBasis, groundOf } from './card-basis.ts';
import type { CardBench } from './card-cell.ts';
import { type JackRow, jackRows, type RowsBy } from './card-jack.ts';
import { type CardLine, insideLines, knobLines, smallLines } from './card-lines.ts';
import { settingsOf } from './card-stands.ts';
import { BAND_SIGMA } from './expect.ts';

export interface CardQuestion {
  readonly circuit: Circuit;
  readonly meter: Meter;
  readonly readings: readonly Reading[];
  readonly repairs: readonly string[];
}

export interface Card {
  readonly jack: readonly JackRow[];
  readonly rowsBy: RowsBy;
  readonly lines: readonly CardLine[];
  readonly basis: CardBasis;
  /** Half the width of a band, in standard deviations. */
  readonly sigma: number;
  /** Parts that measured out of line out of circuit: the card shows what they should be. */
  readonly odd: readonly PartId[];
  /** Where not every combination of switches was looked at: how many may be away from rest. */
  readonly thrown?: number;
}

/**
 * What a meter shows on the guitar as intended: at the jack in every position of the switches with knobs at 10 and at 0, and at the
 * main pairs of lugs inside. Bands are joint: unknowns that readings share are counted once in each figure, two standard deviations
 * either way. Throws CircuitError where the wiring does not hold together.
 */
export function cardOf({ circuit, meter, readings, repairs }: CardQuestion): Card {
  checkCircuit(circuit);
  // After a repair older readings may be of another guitar.
  const fresh = readings.filter(({ round }) => round === repairs.length);
  for (const { ask } of fresh) checkSetting(circuit, ask.setting);
  const { basis, predictor, spread } = groundOf(circuit, meter, fresh);
  const settings = settingsOf(circuit);
  const bench: CardBench = { circuit, predictor, spread, settings };
  const { rows, rowsBy } = jackRows(bench);
  return {
    jack: rows,
    rowsBy,
    lines: [...knobLines(bench, rows), ...insideLines(bench), ...smallLines(bench)],
    basis,
    sigma: BAND_SIGMA,
    odd: circuit.parts.filter((part) => !isInLine(part, meter.room)).map(({ id }) => id),
    ...(settings.thrown !== undefined && { thrown: settings.thrown }),
  };
}
