import type { Circuit } from '../../circuit/circuit.ts';
import { halfPlaces, knobPlaces, listeningPlaces, stringTouch } from '../../flows/index.ts';
import type { Ask } from '../../readings/reading.ts';
import { called } from '../../words/called.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { choicesFor, halfChoices, knobChoices, type SeenChoice } from '../entry/choices.tsx';

/** One thing that can be told before the meter comes out. */
export interface Telling {
  readonly title: string;
  /** Where the selector stands for it, where that is not the title. */
  readonly at?: string;
  readonly ask: Ask;
  readonly choices: readonly SeenChoice[];
}
export interface Group {
  readonly title: string;
  /** How the controls stand for all of them. */
  readonly how: string;
  readonly tellings: readonly Telling[];
}

/** What makes each group; one may be without anything to tell. */
export function groupsFor(circuit: Circuit): readonly (() => Group)[] {
  const places = listeningPlaces(circuit);
  const one = places.length === 1;
  const sound = (): Group => ({
    title: one ? huntWords().theSound : huntWords().inEachPosition,
    how: huntWords().everyKnobAt10,
    tellings: places.map(({ title, ask }) => ({ title, ask, choices: choicesFor('listen') })),
  });
  const turned = (): Group => ({
    title: huntWords().doTheKnobsWork,
    how: huntWords().thatKnobAt0TheOthersAt,
    tellings: knobPlaces(circuit).map(({ pot, title, ask }) => ({
      title: called(pot.title),
      ...(!one && { at: huntWords().titleSelected(title) }),
      ask,
      choices: knobChoices(pot.role),
    })),
  });
  const half = (): Group => ({
    title: huntWords().atHalfVolume,
    how: huntWords().thatVolumeAt5TheRestAt,
    tellings: halfPlaces(circuit).map(({ pot, title, ask }) => ({
      title: huntWords().potAt5(pot.title),
      ...(!one && { at: huntWords().titleSelected(title) }),
      ask,
      choices: halfChoices(),
    })),
  });
  const hum = (): Group => {
    const touch = stringTouch(circuit);
    return {
      title: huntWords().theHum,
      how: huntWords().doNotPlayLayAHandOn,
      tellings: touch
        ? [{ title: huntWords().whenITouchTheStrings, ask: touch, choices: choicesFor('touch') }]
        : [],
    };
  };
  return [sound, turned, half, hum];
}
