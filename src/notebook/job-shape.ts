import { MOST as MOST_OF_CIRCUIT } from '../circuit/limits.ts';
import { notebookWords } from '../words/en/notebook.ts';
import { circuitShape, name, settingShape } from './circuit-shape.ts';
import { JOB_VERSION } from './job.ts';
import {
  byKind,
  type Check,
  JobShapeError,
  list,
  number,
  object,
  oneOf,
  record,
  text,
  whole,
} from './shape.ts';

/** Shapes of a job of the present version, field by field as `Job`, `Ask` and `Seen` have them. */

/** More than years of work on one guitar; they keep a hostile file from holding up the phone. */
export const MOST = { readings: 2000, refused: 1000, repairs: 300, checks: 100 };

export const identifier = text(() => notebookWords().anIdentifierOfLettersDigits, 64, /^[\w~-]+$/);
const DATE = '\\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\\d|3[01])';
const TIME = '(?:[01]\\d|2[0-3]):[0-5]\\d(?::[0-5]\\d(?:\\.\\d{1,9})?)?(?:Z|[+-]\\d{2}:\\d{2})';
export const moment = text(
  () => notebookWords().aTimeAsIn20260301T18,
  40,
  new RegExp(`^${DATE}T${TIME}$`),
);
export const momentOrNone = text(
  () => notebookWords().aTimeOr,
  40,
  new RegExp(`^(?:${DATE}T${TIME})?$`),
);

/** A lug, a joint, a lead, a part or a place inside a part; the circuit says which exist. */
const point = text(() => notebookWords().aLugAsInVolume3Or, 100, /^[\w-]+[.@][\w-]+$/);
const site = text(() => notebookWords().aJointALeadOrAPlace, 120, /^[\w-]+(?:[@:][\w-]+)?$/);

const shownOhms = number(() => notebookWords().aNumberOfOhms, 0, 1e12, 'open');

const asked = (kind: string, keys: Readonly<Record<string, Check>>): Check =>
  object({ kind: oneOf(kind), ...keys, setting: settingShape });
const probes = { red: point, black: point };

export const ask = byKind({
  ohms: asked('ohms', probes),
  beep: asked('beep', probes),
  turn: asked('turn', { ...probes, pot: name }),
  flex: asked('flex', { ...probes, site }),
  tap: asked('tap', { ...probes, coil: name }),
  farads: asked('farads', { ...probes, part: name }),
  listen: asked('listen', {}),
  touch: asked('touch', { metal: point }),
  hum: asked('hum', { against: settingShape }),
  look: asked('look', { at: site }),
  pole: asked('pole', { coil: name }),
});

export const seen = byKind({
  ohms: object({ kind: oneOf('ohms'), ohms: shownOhms }),
  beep: object({ kind: oneOf('beep'), beeps: oneOf(true, false) }),
  turn: object({
    kind: oneOf('turn'),
    how: oneOf('smooth', 'jumps', 'stuck'),
    'peak?': shownOhms,
  }),
  flex: object({ kind: oneOf('flex'), how: oneOf('steady', 'jumps') }),
  tap: object({ kind: oneOf('tap'), swing: oneOf('plus', 'nothing', 'minus') }),
  farads: object({
    kind: oneOf('farads'),
    farads: number(() => notebookWords().aNumberOfFarads, 1e-15, 1, 'open', 'short'),
  }),
  listen: object({
    kind: oneOf('listen'),
    heard: oneOf('normal', 'silent', 'weak', 'thin', 'dull', 'hum', 'crackle'),
  }),
  touch: object({ kind: oneOf('touch'), hum: oneOf('up', 'down', 'same') }),
  hum: object({
    kind: oneOf('hum'),
    decibels: number(() => notebookWords().aNumberOfDecibels, -200, 200),
  }),
  look: object({
    kind: oneOf('look'),
    how: oneOf('good', 'dull', 'loose', 'burnt', 'bridged', 'elsewhere'),
  }),
  pole: object({ kind: oneOf('pole'), pole: oneOf('north', 'south', 'none') }),
});

const readingKeys = object({
  id: identifier,
  ask,
  seen,
  at: moment,
  round: whole(() => notebookWords().aNumberOfRepairs, 0, MOST.repairs),
});
/** An answer is of the kind that was asked. */
export const reading: Check = (value, place) => {
  readingKeys(value, place);
  const { ask: asked, seen: saw } = value as Record<'ask' | 'seen', { readonly kind: string }>;
  if (saw.kind !== asked.kind)
    throw new JobShapeError(
      `${place}.seen.kind`,
      notebookWords().expectedKindAsAskedGotKind2(asked.kind, saw.kind),
    );
};

const repair = object({
  repair: text(() => 'the key of a repair', 300, /\S/),
  title: text(() => notebookWords().aTitleInWords, 500),
  at: moment,
});

const place = object({
  x: number(() => notebookWords().aNumber, -1e5, 1e5),
  y: number(() => notebookWords().aNumber, -1e5, 1e5),
  turn: oneOf(0, 90, 180, 270),
});
export const placesShape = record(name, place, MOST_OF_CIRCUIT.parts);

const setAside = object({ reading, words: text(() => notebookWords().whatWasReadInWords, 600) });

export const meter = object({
  accuracy: number(() => notebookWords().aShare, 1e-6, 0.5),
  leads: number(() => notebookWords().aNumberOfOhms, 0, 100),
  limit: number(() => notebookWords().aNumberOfOhms, 1e3, 1e12),
  'room?': number(() => notebookWords().degreesCelsius, -50, 100),
});

const check = object({
  stage: oneOf('closed', 'open', 'mat'),
  startedAt: moment,
  'endedAt?': moment,
  'celsius?': number(() => notebookWords().degreesCelsius, -30, 60),
});

export const jobShape = object({
  format: oneOf('lugwise-job'),
  version: oneOf(JOB_VERSION),
  id: identifier,
  title: text(() => notebookWords().aTitleInWords, 200),
  guitar: object({ id: identifier, title: text(() => notebookWords().aTitleInWords, 200) }),
  createdAt: moment,
  changedAt: moment,
  circuit: circuitShape,
  'places?': placesShape,
  meter,
  access: oneOf('closed', 'open'),
  readings: list(reading, MOST.readings),
  'setAside?': list(setAside, MOST.readings),
  refused: list(ask, MOST.refused),
  'refusedAt?': list(momentOrNone, MOST.refused),
  repairs: list(repair, MOST.repairs),
  'cautionsReadAt?': moment,
  'closedAt?': moment,
  'checks?': list(check, MOST.checks),
  'practice?': object({ seed: identifier }),
  'lastCheck?': object({ check, readings: list(reading, MOST.readings) }),
});
