import { useState } from 'preact/hooks';
import type { Circuit, Setting } from '../../circuit/circuit.ts';
import { pointTitle } from '../../circuit/names.ts';
import { layoutOf } from '../../circuit/netlist.ts';
import { kindOf } from '../../circuit/parts/index.ts';
import { reachOf } from '../../circuit/reach.ts';
import { called } from '../../words/called.ts';
import { entryWords } from '../../words/en/entry.ts';

interface Points {
  readonly red: string;
  readonly black: string;
}

interface PointFieldsProps {
  readonly circuit: Circuit;
  readonly setting: Setting;
  readonly points: Points;
  onPoints(points: Points): void;
}

const atJack: Points = { red: 'jack.tip', black: 'jack.sleeve' };

/** Where the probes stood: the jack, or any two lugs. */
export function PointFields({ circuit, setting, points, onPoints }: PointFieldsProps) {
  const [inside, setInside] = useState(false);
  const choose = (next: boolean) => {
    setInside(next);
    if (!next) onPoints(atJack);
  };
  return (
    <fieldset class="options options-2">
      <legend>{entryWords().where}</legend>
      <label>
        <input type="radio" name="where" checked={!inside} onChange={() => choose(false)} />
        {entryWords().atTheJack}
      </label>
      <label>
        <input type="radio" name="where" checked={inside} onChange={() => choose(true)} />
        {entryWords().twoOtherPoints}
      </label>
      {inside &&
        (['red', 'black'] as const).map((probe) => (
          <label key={probe} class="field-tall">
            <span>{probe === 'red' ? entryWords().redProbeR : entryWords().blackProbeB}</span>
            <select
              value={points[probe]}
              onChange={({ currentTarget }) =>
                onPoints({ ...points, [probe]: currentTarget.value })
              }
            >
              <PointOptions circuit={circuit} lifted={setting.lifted} />
            </select>
          </label>
        ))}
    </fieldset>
  );
}

/** Every lug in reach, part by part, and the bare ends of what is unsoldered. */
function PointOptions({ circuit, lifted }: { circuit: Circuit; lifted: readonly string[] }) {
  const layout = layoutOf(circuit);
  const ends = circuit.leads
    .flatMap(({ id }) => [`${id}@from`, `${id}@to`])
    .filter((joint) => reachOf(layout, joint) !== 'never' && !lifted.includes(joint));
  return (
    <>
      {lifted.length > 0 && (
        <optgroup label={entryWords().unsoldered}>
          {lifted.map((joint) => (
            <option key={joint} value={joint}>
              {pointTitle(layout, joint)}
            </option>
          ))}
        </optgroup>
      )}
      {circuit.parts.map((part) => {
        const lugs = kindOf(part)
          .lugs(part)
          .map((lug) => `${part.id}.${lug}`)
          .filter((ref) => reachOf(layout, ref) !== 'never');
        return lugs.length === 0 ? null : (
          <optgroup key={part.id} label={called(part.title)}>
            {lugs.map((ref) => (
              <option key={ref} value={ref}>
                {pointTitle(layout, ref)}
              </option>
            ))}
          </optgroup>
        );
      })}
      <optgroup label={entryWords().bareEndsBeyondAJoint}>
        {ends.map((joint) => (
          <option key={joint} value={joint}>
            {pointTitle(layout, joint)}
          </option>
        ))}
      </optgroup>
    </>
  );
}
