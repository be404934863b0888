import type { Circuit, Setting } from '../circuit/circuit.ts';
import type { Switch } from '../circuit/parts/part.ts';
import { restingSetting, switchesOf } from '../circuit/setting.ts';
import type { AskOf } from '../readings/reading.ts';
import { called } from '../words/called.ts';
import { flowWords } from '../words/en/flows.ts';

/** One row of the first question: the guitar in one selector position, everything full up, plugged in. */
export interface ListeningPlace {
  readonly title: string;
  readonly ask: AskOf<'listen'>;
}

/** Full up and plugged in: how a guitar is listened to. */
const playing = (circuit: Circuit): Setting => ({ ...restingSetting(circuit), plug: 'in' });

/** The switch that chooses among the pickups: the one with most positions. Null on a guitar without. */
export function selectorOf(circuit: Circuit): Switch | null {
  return switchesOf(circuit).reduce<Switch | null>(
    (most, one) => (most && most.positions.length >= one.positions.length ? most : one),
    null,
  );
}

/** What can be listened to before any meter comes out. */
export function listeningPlaces(circuit: Circuit): readonly ListeningPlace[] {
  const setting = playing(circuit);
  const selector = selectorOf(circuit);
  if (!selector) return [{ title: flowWords().theGuitar, ask: { kind: 'listen', setting } }];
  return selector.positions.map(({ name, title }) => ({
    title: called(title),
    ask: {
      kind: 'listen',
      setting: { ...setting, positions: { ...setting.positions, [selector.id]: name } },
    },
  }));
}

/** The touch that needs no meter: a hand on the strings while the guitar hums. Null without strings in the model. */
export function stringTouch(circuit: Circuit): AskOf<'touch'> | null {
  const strings = circuit.parts.find((part) => part.kind === 'metal' && part.role === 'strings');
  if (!strings) return null;
  return { kind: 'touch', metal: `${strings.id}.metal`, setting: playing(circuit) };
}
