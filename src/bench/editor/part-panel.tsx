import type { Circuit } from '../../circuit/circuit.ts';
import { goesWith } from '../../circuit/editing/parts.ts';
import { MOST } from '../../circuit/limits.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import { called } from '../../words/called.ts';
import { editorWords } from '../../words/en/editor.ts';
import { GRID, type Place, type Places, standOf, type Turn } from '../drawings/whole/index.ts';
import { Panel } from '../pieces/panel.tsx';
import { capital } from '../words.ts';
import { PartFields } from './part-fields.tsx';
import { PartValues } from './part-values.tsx';
import type { SketchAct } from './sketch.ts';

interface PartPanelProps {
  readonly circuit: Circuit;
  readonly places: Places;
  readonly part: PartId;
  onAct(act: SketchAct): void;
  onMove(): void;
  onClose(): void;
}

/** Units that a part goes by one press. */
const NUDGE = 4 * GRID;
const ways = [
  { words: 'moveLeft', sign: '←', x: -NUDGE, y: 0 },
  { words: 'moveUp', sign: '↑', x: 0, y: -NUDGE },
  { words: 'moveDown', sign: '↓', x: 0, y: NUDGE },
  { words: 'moveRight', sign: '→', x: NUDGE, y: 0 },
] as const;

/** One part, or the pickup that it belongs to: what it is called and is, what it is worth, where it stands. */
export function PartPanel({ circuit, places, part: id, onAct, onMove, onClose }: PartPanelProps) {
  const part = circuit.parts.find((one) => one.id === id);
  if (!part) return null;
  const together = goesWith(circuit, id);
  const pickup = circuit.pickups.find(({ coils, plate, cover }) =>
    [...coils, plate, cover].includes(id),
  );
  const thing = pickup ?? part;
  const own = circuit.parts.filter((one) => together.has(one.id));
  const place = places.get(standOf(circuit, id));
  const put = (to: Partial<Place>) => {
    if (place) onAct({ do: 'place', part: id, place: { ...place, ...to } });
  };
  const title = capital(called(thing.title));
  return (
    <Panel title={title} onClose={onClose}>
      <div class="row panel-acts">
        <button type="button" class="plain" onClick={onMove}>
          {editorWords().move}
        </button>
        <button
          type="button"
          class="plain"
          onClick={() => place && put({ turn: ((place.turn + 90) % 360) as Turn })}
        >
          {editorWords().turn}
        </button>
        <button
          type="button"
          class="plain danger"
          onClick={() => {
            onAct({ do: 'remove', part: id });
            onClose();
          }}
        >
          {editorWords().remove}
        </button>
      </div>
      <div class="row panel-acts">
        {ways.map(({ words, sign, x, y }) => (
          <button
            key={words}
            type="button"
            class="plain step"
            aria-label={editorWords()[words]}
            onClick={() => place && put({ x: place.x + x, y: place.y + y })}
          >
            {sign}
          </button>
        ))}
      </div>
      <label class="field-tall">
        <span>{editorWords().name}</span>
        <input
          key={thing.title}
          defaultValue={called(thing.title)}
          maxLength={MOST.title}
          onChange={({ currentTarget }) =>
            onAct({ do: 'rename', thing: thing.id, title: currentTarget.value })
          }
        />
      </label>
      <PartValues key={id} circuit={circuit} parts={together} onAct={onAct} />
      {own.map((one) => (
        <fieldset key={one.id} class="part-fields">
          {own.length > 1 && <legend>{called(one.title)}</legend>}
          <PartFields part={one} onPart={(changed) => onAct({ do: 'change', part: changed })} />
        </fieldset>
      ))}
    </Panel>
  );
}
