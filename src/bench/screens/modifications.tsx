import { useState } from 'preact/hooks';
import { type Change, compose } from '../../circuit/catalog/modifications/compose.ts';
import { modifications } from '../../circuit/catalog/modifications/index.ts';
import {
  type Choice,
  type Modification,
  optionOf,
  type Place,
} from '../../circuit/catalog/modifications/modification.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import { called } from '../../words/called.ts';
import { deskWords } from '../../words/en/desk.ts';
import { announce } from '../pieces/announce.tsx';
import { capital } from '../words.ts';

interface ModificationsProps {
  /** The starting wiring. */
  readonly base: Circuit;
  readonly changes: readonly Change[];
  onChanges(changes: readonly Change[]): void;
}

/** Why the last tick was not taken, and where it was. */
interface Refusal {
  readonly at: string;
  readonly sentence: string;
}

const keyOf = (modification: Modification, place: Place): string =>
  `${modification.id} ${place.id}`;

/** Why a change cannot be made whatever is ticked beside it; null where one of those that are ticked makes room for it. */
function neverAt(base: Circuit, changes: readonly Change[], change: Change): string | null {
  const sentence = change.modification.conflict(base, change.place);
  if (sentence === null) return null;
  const at = keyOf(change.modification, change.place);
  const others = changes.filter(({ modification, place }) => keyOf(modification, place) !== at);
  const { refused } = compose(base, [...others, change]);
  return refused.some((one) => one.change === change) ? sentence : null;
}

/** What players change on a guitar: all that can go on this one, each at its places. What does not go together is not taken. */
export function Modifications({ base, changes, onChanges }: ModificationsProps) {
  const [unfolded, setUnfolded] = useState(false);
  const [refusal, setRefusal] = useState<Refusal | null>(null);

  const take = (at: string, next: readonly Change[]) => {
    const sentence = compose(base, next).refused[0]?.sentence;
    setRefusal(sentence === undefined ? null : { at, sentence });
    if (sentence === undefined) onChanges(next);
    else announce(sentence);
  };
  const without = (at: string) =>
    changes.filter((change) => keyOf(change.modification, change.place) !== at);

  return (
    <details onToggle={({ currentTarget }) => setUnfolded(currentTarget.open)}>
      <summary>
        <span>
          {deskWords().whatWasChangedOnIt}{' '}
          <span class="soft">
            {changes.length === 0
              ? deskWords().nothingTicked
              : deskWords().countTicked(changes.length)}
          </span>
        </span>
      </summary>
      {unfolded &&
        modifications.map((modification) => {
          const places = modification.applies(base);
          return (
            places.length > 0 && (
              <fieldset key={modification.id} class="modification">
                <legend>{called(modification.title)}</legend>
                <p class="soft">{called(modification.does)}</p>
                {places.map((place) => {
                  const at = keyOf(modification, place);
                  const made = changes.find(
                    (change) => keyOf(change.modification, change.place) === at,
                  );
                  return (
                    <PlaceRow
                      key={at}
                      place={place}
                      made={made}
                      choices={made ? modification.choices(base, place) : []}
                      never={neverAt(base, changes, { modification, place, chosen: {} })}
                      refused={refusal?.at === at ? refusal.sentence : null}
                      onChange={(change) =>
                        take(
                          at,
                          change
                            ? [...without(at), { modification, place, chosen: change }]
                            : without(at),
                        )
                      }
                    />
                  );
                })}
              </fieldset>
            )
          );
        })}
    </details>
  );
}

interface PlaceRowProps {
  readonly place: Place;
  readonly made: Change | undefined;
  readonly choices: readonly Choice[];
  /** Why it cannot go here whatever else is changed. */
  readonly never: string | null;
  readonly refused: string | null;
  onChange(chosen: Change['chosen'] | null): void;
}

function PlaceRow({ place, made, choices, never, refused, onChange }: PlaceRowProps) {
  return (
    <>
      <label class="tick">
        <input
          type="checkbox"
          checked={made !== undefined}
          disabled={never !== null}
          onChange={(event) => {
            onChange(event.currentTarget.checked ? {} : null);
            // A tick that was not taken shows as it is kept.
            event.currentTarget.checked = made !== undefined;
          }}
        />
        {capital(called(place.title))}
      </label>
      {(never ?? refused) && (
        <p class={never ? 'soft' : 'field-fault'} role={refused ? 'alert' : undefined}>
          {never ?? refused}
        </p>
      )}
      {made &&
        choices.map((choice) => (
          <label key={choice.id} class="field-tall">
            <span>{called(choice.title)}</span>
            <select
              value={optionOf(choice, made.chosen).id}
              onChange={(event) => {
                onChange({ ...made.chosen, [choice.id]: event.currentTarget.value });
                event.currentTarget.value = optionOf(choice, made.chosen).id;
              }}
            >
              {choice.options.map(({ id, title }) => (
                <option key={id} value={id}>
                  {called(title)}
                </option>
              ))}
            </select>
          </label>
        ))}
    </>
  );
}
