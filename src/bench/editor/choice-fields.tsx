import {
  type Choice,
  type Chosen,
  optionOf,
} from '../../circuit/catalog/modifications/modification.ts';
import { called } from '../../words/called.ts';

interface ChoiceFieldsProps {
  readonly choices: readonly Choice[];
  readonly chosen: Chosen;
  onChosen(chosen: Chosen): void;
}

/** One field for each thing to decide. */
export const ChoiceFields = ({ choices, chosen, onChosen }: ChoiceFieldsProps) => (
  <>
    {choices.map((choice) => (
      <label key={choice.id} class="field-tall">
        <span>{called(choice.title)}</span>
        <select
          value={optionOf(choice, chosen).id}
          onChange={({ currentTarget }) =>
            onChosen({ ...chosen, [choice.id]: currentTarget.value })
          }
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
