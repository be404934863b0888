import type { Circuit, Setting } from '../../circuit/circuit.ts';
import { jointTitle } from '../../circuit/names.ts';
import { layoutOf } from '../../circuit/netlist.ts';
import { reachOf } from '../../circuit/reach.ts';
import { potsOf, switchesOf, withKnob } from '../../circuit/setting.ts';
import { called } from '../../words/called.ts';
import { entryWords } from '../../words/en/entry.ts';
import { capital } from '../words.ts';

interface ControlsFieldsProps {
  readonly circuit: Circuit;
  readonly setting: Setting;
  /** Whether an unsoldered end can be named. */
  readonly lifting: boolean;
  onSetting(setting: Setting): void;
}

/** How the controls stood. */
export function ControlsFields({ circuit, setting, lifting, onSetting }: ControlsFieldsProps) {
  return (
    <>
      {switchesOf(circuit).map((part) => (
        <fieldset key={part.id} class="options options-3">
          <legend>{entryWords().partAt(capital(called(part.title)))}</legend>
          {part.positions.map(({ name, title }) => (
            <label key={name}>
              <input
                type="radio"
                name={part.id}
                checked={setting.positions[part.id] === name}
                onChange={() =>
                  onSetting({ ...setting, positions: { ...setting.positions, [part.id]: name } })
                }
              />
              {called(title)}
            </label>
          ))}
        </fieldset>
      ))}
      <details>
        <summary>{entryWords()[lifting ? 'knobsAndEnds' : 'knobs'](otherWords(setting))}</summary>
        {potsOf(circuit).map((part) => (
          <label key={part.id} class="field">
            <span>{capital(called(part.title))}</span>
            <select
              value={String(setting.knobs[part.id] ?? 10)}
              onChange={({ currentTarget }) =>
                onSetting(withKnob(setting, part.id, Number(currentTarget.value)))
              }
            >
              {figures.map((figure) => (
                <option key={figure} value={String(figure)}>
                  {figure}
                </option>
              ))}
            </select>
          </label>
        ))}
        {lifting && <LiftedField circuit={circuit} setting={setting} onSetting={onSetting} />}
      </details>
    </>
  );
}

function LiftedField({ circuit, setting, onSetting }: Omit<ControlsFieldsProps, 'lifting'>) {
  const layout = layoutOf(circuit);
  const joints = circuit.leads
    .filter(({ kind }) => kind !== 'mount')
    .flatMap(({ id }) => [`${id}@from`, `${id}@to`])
    .filter((joint) => reachOf(layout, joint) !== 'never');
  return (
    <label class="field-tall">
      <span>{entryWords().unsolderedEnd}</span>
      <select
        value={setting.lifted[0] ?? ''}
        onChange={({ currentTarget: { value } }) =>
          onSetting({ ...setting, lifted: value ? [value] : [] })
        }
      >
        <option value="">{entryWords().none}</option>
        {joints.map((joint) => (
          <option key={joint} value={joint}>
            {jointTitle(layout, joint)}
          </option>
        ))}
      </select>
    </label>
  );
}

const figures = [10, 9, 8, 7, 6, 5, 4, 3, 2, 1, 0];

const otherWords = ({ knobs, lifted }: Setting): string => {
  const full = Object.values(knobs).every((figure) => figure === 10);
  return `${full ? entryWords().allAt10 : 'set'}${lifted.length > 0 ? entryWords().oneEndOff : ''}`;
};
