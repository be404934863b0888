import { checkCircuit } from '../circuit/check.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { circuitOf } from '../circuit/seen-pickup.ts';
import { notebookWords } from '../words/en/notebook.ts';
import { circuitShape, name } from './circuit-shape.ts';
import { ask, identifier, MOST, meter, moment, momentOrNone, reading, seen } from './job-shape.ts';
import { checkAsk, checkRefusalTimes, migrated, within } from './restore.ts';
import { type Check, JobShapeError, list, object, oneOf, record, text } from './shape.ts';
import { type PickupSheet, type PlayingReading, SHEET_VERSION, type Sheet } from './sheet.ts';

const title = text(() => notebookWords().aTitleInWords, 200, /\S/);
const base = {
  version: oneOf(SHEET_VERSION),
  id: identifier,
  title,
  createdAt: moment,
  changedAt: moment,
  'cautionsReadAt?': moment,
};

const seenPickup = object({
  coils: oneOf(1, 2),
  leads: list(
    object({
      id: name,
      colour: text(() => notebookWords().aColourInWords, 40, /\S/),
      'mark?': text(() => notebookWords().aMarkInWords, 40, /\S/),
      what: oneOf('wire', 'bare', 'pair'),
    }),
    6,
    2,
  ),
  plate: oneOf(true, false),
  cover: oneOf(true, false),
});

const pickupShape = object({
  format: oneOf('lugwise-pickup'),
  ...base,
  seen: seenPickup,
  meter,
  readings: list(reading, MOST.readings),
  refused: list(ask, MOST.refused),
  'refusedAt?': list(momentOrNone, MOST.refused),
});

const togetherShape = object({
  format: oneOf('lugwise-together'),
  ...base,
  pickups: list(object({ id: name, title, coils: oneOf(1, 2), at: oneOf('jack', 'leads') }), 6, 2),
  readings: list(
    object({ id: identifier, pickup: name, coil: oneOf('a', 'b'), seen, at: moment }),
    MOST.readings,
  ),
  'noCompass?': oneOf(true, false),
  'meant?': object({ circuit: circuitShape, places: record(name, name, 6) }),
});

const shapes: Readonly<Record<Sheet['format'], Check>> = {
  'lugwise-pickup': pickupShape,
  'lugwise-together': togetherShape,
};
export const isSheetFormat = (format: unknown): format is Sheet['format'] =>
  typeof format === 'string' && Object.hasOwn(shapes, format);

/**
 * Every sheet that is loaded, from the disk or from a file, passes here once and is trusted after. Throws JobShapeError, whose
 * sentence names the place and is fit to show. `raw` is not changed.
 */
export function restoreSheet(raw: unknown): Sheet {
  const format = (raw as { format?: unknown } | null)?.format;
  if (!isSheetFormat(format))
    throw new JobShapeError('format', notebookWords().expectedLugwisePickupOrLugwise);
  const sheet = migrated(raw, {}, SHEET_VERSION, format);
  shapes[format](sheet, '');
  const checked = sheet as unknown as Sheet;
  if (checked.format === 'lugwise-pickup') checkPickup(checked);
  else {
    checkIds(checked.readings, 'readings');
    checkIds(checked.pickups, 'pickups');
    if (checked.meant) within('meant.circuit', () => checkCircuit(checked.meant!.circuit));
    for (const [at, one] of checked.readings.entries()) checkPlaying(one, `readings[${at}]`);
  }
  return checked;

  function checkPlaying({ pickup, coil, seen: saw }: PlayingReading, place: string): void {
    const owner =
      checked.format === 'lugwise-together'
        ? checked.pickups.find(({ id }) => id === pickup)
        : undefined;
    if (!owner)
      throw new JobShapeError(
        `${place}.pickup`,
        notebookWords().thereIsNoPickupCalledPickup(pickup),
      );
    if (owner.coils === 1 && coil === 'b')
      throw new JobShapeError(
        `${place}.coil`,
        notebookWords().ownerHasOneCoilWhichIsA(owner.title),
      );
    if (saw.kind !== 'tap' && saw.kind !== 'pole')
      throw new JobShapeError(`${place}.seen.kind`, notebookWords().expectedTapOrPole);
  }
}

function checkPickup(sheet: PickupSheet): void {
  const layout = within('seen', () => {
    const circuit = circuitOf(sheet.seen);
    checkCircuit(circuit);
    return layoutOf(circuit);
  });
  checkIds(sheet.readings, 'readings');
  for (const [index, { ask: asked }] of sheet.readings.entries())
    checkAsk(layout, asked, `readings[${index}].ask`);
  for (const [index, asked] of sheet.refused.entries())
    checkAsk(layout, asked, `refused[${index}]`);
  checkRefusalTimes(sheet);
}

function checkIds(list: readonly { readonly id: string }[], place: string): void {
  const ids = new Set<string>();
  for (const [index, { id }] of list.entries()) {
    if (ids.has(id))
      throw new JobShapeError(
        `${place}[${index}].id`,
        notebookWords().twoPlaceAreCalledId(place, id),
      );
    ids.add(id);
  }
}
