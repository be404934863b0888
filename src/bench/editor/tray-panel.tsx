import { useState } from 'preact/hooks';
import type { Chosen } from '../../circuit/catalog/modifications/modification.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import type { Piece } from '../../circuit/editing/piece.ts';
import { tray } from '../../circuit/editing/tray/index.ts';
import type { TrayItem } from '../../circuit/editing/tray/item.ts';
import { called } from '../../words/called.ts';
import { editorWords } from '../../words/en/editor.ts';
import { Panel } from '../pieces/panel.tsx';
import { ChoiceFields } from './choice-fields.tsx';

interface TrayPanelProps {
  readonly circuit: Circuit;
  onPiece(piece: Piece): void;
  onClose(): void;
}

/** Everything that can be placed: first what it is, then what there is to decide about it. */
export function TrayPanel({ circuit, onPiece, onClose }: TrayPanelProps) {
  const [item, setItem] = useState<TrayItem | null>(null);
  const [chosen, setChosen] = useState<Chosen>({});
  if (!item)
    return (
      <Panel title={editorWords().addAPart} onClose={onClose}>
        <ul class="tray">
          {tray.map((one) => (
            <li key={one.id}>
              <button
                type="button"
                onClick={() => {
                  setChosen({});
                  if (one.choices(circuit, {}).length === 0) onPiece(one.make(circuit, {}));
                  else setItem(one);
                }}
              >
                <span class="says">{called(one.title)}</span>
                {one.note && <span class="note">{called(one.note)}</span>}
              </button>
            </li>
          ))}
        </ul>
      </Panel>
    );
  return (
    <Panel title={called(item.title)} onClose={onClose}>
      <ChoiceFields choices={item.choices(circuit, chosen)} chosen={chosen} onChosen={setChosen} />
      <div class="row">
        <button type="button" class="plain" onClick={() => setItem(null)}>
          {editorWords().anotherPart}
        </button>
        <button type="button" class="main" onClick={() => onPiece(item.make(circuit, chosen))}>
          {editorWords().placeIt}
        </button>
      </div>
    </Panel>
  );
}
