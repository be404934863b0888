import { MOST } from '../circuit/limits.ts';
import { notebookWords } from '../words/en/notebook.ts';
import { byKind, type Check, list, number, object, oneOf, record, text, tuple } from './shape.ts';

/**
 * Shapes of the circuit inside a job, field by field as `Circuit` and `Part` have them. What a name
 * refers to is no matter of shape: `checkCircuit` follows.
 */

/** Names that every JavaScript object answers to are refused, so that no look-up by name goes astray. */
const INHERITED =
  'constructor|hasOwnProperty|isPrototypeOf|propertyIsEnumerable|toString|valueOf|toLocaleString';
const NAME = new RegExp(`^(?!(?:${INHERITED})$)[A-Za-z][A-Za-z0-9_-]{0,39}$`);
export const name = text(() => notebookWords().aNameOfLettersDigitsAndThat, 40, NAME);
const lugName = text(() => notebookWords().aLugNameOfLettersAndDigits, 24, /^[A-Za-z0-9_]{1,24}$/);
const lug = text(
  () => notebookWords().aLugAsInVolume3,
  80,
  /^[A-Za-z][A-Za-z0-9_-]*\.[A-Za-z0-9_]+$/,
);
export const joint = text(
  () => notebookWords().aJointAsInHotFrom,
  60,
  /^[A-Za-z][A-Za-z0-9_-]*@(?:from|to)$/,
);
const title = text(() => notebookWords().aTitleInWords, MOST.title, /\S/);
export const positionName = text(() => notebookWords().theNameOfAPosition, 60, /\S/);

const tolerance = number(() => notebookWords().aShare, 1e-6, 1);
const sign = oneOf(1, -1);
const yesOrNo = oneOf(true, false);

const ohms = number(() => notebookWords().aNumberOfOhms, 1e-3, 1e9);
const farads = number(() => notebookWords().aNumberOfFarads, 1e-15, 1);
const henries = number(() => notebookWords().aNumberOfHenries, 1e-6, 1e4);
const partValue = (check: Check): Check =>
  object({
    nominal: check,
    tolerance,
    'measured?': check,
    'measuredOpen?': oneOf(true),
    'measuredAt?': number(() => notebookWords().degreesCelsius, -50, 100),
  });

const part = byKind({
  coil: object({
    kind: oneOf('coil'),
    id: name,
    title,
    ohms: partValue(ohms),
    henries,
    selfFarads: farads,
    winding: sign,
    magnet: sign,
    place: oneOf('single', 'screw', 'slug', 'upper', 'lower'),
    ends: oneOf('sealed', 'eyelets'),
  }),
  pot: object({
    kind: oneOf('pot'),
    id: name,
    title,
    ohms: partValue(ohms),
    taper: oneOf('linear', 'audio', 'reverse-audio'),
    midShare: number(() => notebookWords().aShare, 1e-6, 1 - 1e-6),
    role: oneOf('volume', 'tone', 'other'),
    'noLoad?': yesOrNo,
    'leftHanded?': yesOrNo,
  }),
  switch: object({
    kind: oneOf('switch'),
    id: name,
    title,
    style: oneOf(
      'toggle',
      'blade',
      'mini-toggle',
      'push-pull',
      'push-push',
      'rotary',
      'slide',
      'button',
    ),
    positions: list(
      object({ name: positionName, title, joins: list(tuple(lugName, lugName), MOST.joins) }),
      MOST.positions,
      1,
    ),
    rows: list(list(lugName, MOST.row), MOST.rows),
    'carrier?': name,
    frame: yesOrNo,
  }),
  capacitor: object({ kind: oneOf('capacitor'), id: name, title, farads: partValue(farads) }),
  resistor: object({ kind: oneOf('resistor'), id: name, title, ohms: partValue(ohms) }),
  jack: object({ kind: oneOf('jack'), id: name, title, ring: yesOrNo }),
  metal: object({
    kind: oneOf('metal'),
    id: name,
    title,
    role: oneOf('strings', 'plate', 'cover', 'foil', 'paint', 'control-plate'),
    outside: yesOrNo,
  }),
  splice: object({ kind: oneOf('splice'), id: name, title }),
});

const lead = object({
  id: name,
  kind: oneOf('wire', 'pickup', 'leg', 'mount'),
  from: lug,
  to: lug,
  'colour?': text(() => notebookWords().aColourInWords, MOST.colour),
});

const pickup = object({
  id: name,
  title,
  coils: list(name, MOST.coils),
  'plate?': name,
  'cover?': name,
  'stringsEach?': oneOf(true),
});

export const circuitShape = object({
  id: text(() => 'a name for the wiring', 100, /\S/),
  title,
  parts: list(part, MOST.parts),
  leads: list(lead, MOST.leads),
  pickups: list(pickup, MOST.pickups),
});

export const settingShape = object({
  positions: record(name, positionName, MOST.parts),
  knobs: record(
    name,
    number(() => notebookWords().aKnobFigure, 0, 10),
    MOST.parts,
  ),
  plug: oneOf('in', 'out'),
  lifted: list(joint, 40),
});
