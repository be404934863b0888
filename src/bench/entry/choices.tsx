import type { ComponentChildren } from 'preact';
import type { PartOf } from '../../circuit/parts/part.ts';
import type { Ask, Heard, Seen } from '../../readings/reading.ts';
import { entryWords } from '../../words/en/entry.ts';

export interface SeenChoice {
  readonly says: string;
  /** A line under it where the word alone may be taken in two ways. */
  readonly note?: string;
  readonly seen: Seen;
}

/** What the ear tells, in a player's words. */
export const heardWords = (): readonly { heard: Heard; says: string; note: string }[] => [
  { heard: 'normal', says: entryWords().normal, note: entryWords().asItShouldBe },
  { heard: 'silent', says: entryWords().silent, note: entryWords().nothingAtAll },
  { heard: 'weak', says: entryWords().weak, note: entryWords().muchTooSoft },
  { heard: 'thin', says: entryWords().thin, note: entryWords().hollowNoBass },
  { heard: 'dull', says: entryWords().dull, note: entryWords().noTreble },
  { heard: 'hum', says: entryWords().hum, note: entryWords().loudHumOrBuzz },
  { heard: 'crackle', says: entryWords().crackles, note: entryWords().cutsOutOrScratches },
];

/**
 * What a knob at 0 does, in a player's words. What is heard is named against a healthy guitar with the
 * knob at 0: a tone knob that changes nothing leaves it too bright, and a volume knob at 0 leaves silence.
 */
export function knobChoices(role: PartOf<'pot'>['role']): readonly SeenChoice[] {
  const heard = (word: Heard): Seen => ({ kind: 'listen', heard: word });
  const hum: SeenChoice = {
    says: entryWords().hum,
    note: entryWords().loudHumOrBuzz,
    seen: heard('hum'),
  };
  const crackle: SeenChoice = {
    says: entryWords().crackles,
    note: entryWords().whileITurnIt,
    seen: heard('crackle'),
  };
  if (role === 'volume')
    return [
      { says: entryWords().asItShould, note: entryWords().downToSilence, seen: heard('silent') },
      { says: entryWords().noChange, note: entryWords().asLoudAsAt10, seen: heard('normal') },
      {
        says: entryWords().neverSilent,
        note: entryWords().softerOrDullStillThere,
        seen: heard('dull'),
      },
      hum,
      crackle,
    ];
  const silent: SeenChoice = {
    says: entryWords().silent,
    note: entryWords().nothingAtAll,
    seen: heard('silent'),
  };
  if (role === 'tone')
    return [
      { says: entryWords().asItShould, note: entryWords().darkTrebleGone, seen: heard('normal') },
      { says: entryWords().noChange, note: entryWords().asBrightAsAt10, seen: heard('thin') },
      silent,
      { says: entryWords().softer, note: entryWords().theVolumeFallsToo, seen: heard('weak') },
      hum,
      crackle,
    ];
  return [{ says: entryWords().asItShould, seen: heard('normal') }, silent, hum, crackle];
}

/** What a volume with a treble bleed does at half, against the same guitar as it should be. */
export const halfChoices = (): readonly SeenChoice[] => [
  choice(entryWords().asItShould, entryWords().softerTrebleStays, 'normal'),
  choice(entryWords().dull, entryWords().theTrebleGoes, 'dull'),
  choice(entryWords().thin, entryWords().theBassGoes, 'thin'),
  choice(entryWords().silent, entryWords().nothingAtAll, 'silent'),
];

const choice = (says: string, note: string, heard: Heard): SeenChoice => ({
  says,
  note,
  seen: { kind: 'listen', heard },
});

/** The answers of every kind that is not a number. */
export function choicesFor(
  kind: Exclude<Ask['kind'], 'ohms' | 'farads' | 'turn' | 'hum'>,
): readonly SeenChoice[] {
  switch (kind) {
    case 'beep':
      return [
        { says: entryWords().beeps, seen: { kind, beeps: true } },
        { says: entryWords().silent, seen: { kind, beeps: false } },
      ];
    case 'flex':
      return [
        {
          says: entryWords().steady,
          note: entryWords().theNumberStays,
          seen: { kind, how: 'steady' },
        },
        {
          says: entryWords().jumps,
          note: entryWords().itComesAndGoes,
          seen: { kind, how: 'jumps' },
        },
      ];
    case 'tap':
      return [
        { says: '−', note: entryWords().swing.minus, seen: { kind, swing: 'minus' } },
        { says: '0', note: entryWords().swing.nothing, seen: { kind, swing: 'nothing' } },
        { says: '+', note: entryWords().swing.plus, seen: { kind, swing: 'plus' } },
      ];
    case 'touch':
      return [
        { says: entryWords().softer, note: entryWords().theHumFalls, seen: { kind, hum: 'down' } },
        { says: entryWords().theSame, note: entryWords().noChange2, seen: { kind, hum: 'same' } },
        { says: entryWords().louder, note: entryWords().theHumRises, seen: { kind, hum: 'up' } },
      ];
    case 'look':
      return [
        {
          says: entryWords().good,
          note: entryWords().smoothShinyTight,
          seen: { kind, how: 'good' },
        },
        {
          says: entryWords().dull,
          note: entryWords().greyLumpyCracked,
          seen: { kind, how: 'dull' },
        },
        {
          says: entryWords().loose,
          note: entryWords().itMovesOrIsOff,
          seen: { kind, how: 'loose' },
        },
        { says: entryWords().burnt, note: entryWords().brownMelted, seen: { kind, how: 'burnt' } },
        {
          says: entryWords().bridged,
          note: entryWords().solderOrAStrandTouchesIts,
          seen: { kind, how: 'bridged' },
        },
        {
          says: entryWords().elsewhere,
          note: entryWords().theLeadSitsOnAnotherLug,
          seen: { kind, how: 'elsewhere' },
        },
      ];
    case 'pole':
      return [
        { says: entryWords().north, seen: { kind, pole: 'north' } },
        { says: entryWords().south, seen: { kind, pole: 'south' } },
        { says: entryWords().noPull, seen: { kind, pole: 'none' } },
      ];
    case 'listen':
      return heardWords().map(({ heard, says, note }) => ({ says, note, seen: { kind, heard } }));
  }
}

interface ChoicesProps {
  readonly choices: readonly SeenChoice[];
  onSeen(seen: Seen): void;
}

/** Large keys, one an answer. */
export const Choices = ({ choices, onSeen }: ChoicesProps) => (
  <div class={`choices choices-${choices.length}`}>
    {choices.map(({ says, note, seen }) => (
      <BigKey key={says} says={says} note={note} onPress={() => onSeen(seen)} />
    ))}
  </div>
);

export const BigKey = ({
  says,
  note,
  onPress,
}: {
  says: ComponentChildren;
  note?: string | undefined;
  onPress(): void;
}) => (
  <button type="button" class="large" onClick={onPress}>
    <span class="says">{says}</span>
    {note && <span class="note">{note}</span>}
  </button>
);
