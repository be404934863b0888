import { useState } from 'preact/hooks';
import type { Circuit, JointId, LeadId } from '../../circuit/circuit.ts';
import { MOST } from '../../circuit/limits.ts';
import { editorWords } from '../../words/en/editor.ts';
import { Panel } from '../pieces/panel.tsx';
import { leadWords, lugWords } from './lead-words.ts';
import type { SketchAct } from './sketch.ts';

interface LeadPanelProps {
  readonly circuit: Circuit;
  readonly lead: LeadId;
  onAct(act: SketchAct): void;
  onTake(joint: JointId): void;
  onClose(): void;
}

/** One lead: its colour as seen, in any words, its ends, whether it is a wire at all. */
export function LeadPanel({ circuit, lead: id, onAct, onTake, onClose }: LeadPanelProps) {
  const lead = circuit.leads.find((one) => one.id === id);
  const [typed, setTyped] = useState(lead?.colour ?? '');
  if (!lead) return null;
  const paint = (colour: string) => {
    setTyped(colour);
    onAct({ do: 'colour', lead: id, colour });
  };
  const loose = lead.kind === 'wire' || lead.kind === 'mount';
  const title = leadWords(circuit, id);
  return (
    <Panel title={title.charAt(0).toUpperCase() + title.slice(1)} onClose={onClose}>
      {lead.kind !== 'mount' && (
        <>
          <label class="field-tall">
            <span>{editorWords().colourYouSee}</span>
            <input
              value={typed}
              placeholder={editorWords().notTold}
              maxLength={MOST.colour}
              autocapitalize="off"
              onInput={({ currentTarget }) => setTyped(currentTarget.value)}
              onChange={({ currentTarget }) => paint(currentTarget.value)}
            />
          </label>
          <div class="colours">
            {editorWords().colours.map((colour) => (
              <button
                key={colour}
                type="button"
                class="chip"
                aria-pressed={lead.colour === colour}
                onClick={() => paint(lead.colour === colour ? '' : colour)}
              >
                {colour}
              </button>
            ))}
          </div>
        </>
      )}
      <div class="row">
        {(loose ? (['from', 'to'] as const) : (['to'] as const)).map((end) => (
          <button key={end} type="button" class="plain" onClick={() => onTake(`${id}@${end}`)}>
            {editorWords().takeItOffLug(lugWords(circuit, lead[end]))}
          </button>
        ))}
        {loose && (
          <button
            type="button"
            class="plain"
            onClick={() =>
              onAct({ do: 'kind', lead: id, kind: lead.kind === 'wire' ? 'mount' : 'wire' })
            }
          >
            {lead.kind === 'wire' ? editorWords().theyTouchNoWire : editorWords().itIsAWire}
          </button>
        )}
        <button
          type="button"
          class="plain danger"
          onClick={() => {
            onAct({ do: 'cut', lead: id });
            onClose();
          }}
        >
          {editorWords().remove}
        </button>
      </div>
    </Panel>
  );
}
