import type { Circuit, LeadId, LugRef } from '../../circuit/circuit.ts';
import { lugsOf } from '../../circuit/editing/find.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import { called } from '../../words/called.ts';
import { editorWords } from '../../words/en/editor.ts';
import { Panel } from '../pieces/panel.tsx';
import type { Hand } from './hand.ts';
import { leadsFrom, lugName, lugWords } from './lead-words.ts';

interface ListPanelProps {
  readonly circuit: Circuit;
  readonly hand: Hand;
  onLug(lug: LugRef): void;
  onLead(lead: LeadId): void;
  onPart(part: PartId): void;
  /** Every part to where it stands by itself. */
  onTidy(): void;
  onClose(): void;
}

/** The whole wiring in words, with the same acts as the drawing: for keys, for a screen reader, and for crowded places. */
export function ListPanel({
  circuit,
  hand,
  onLug,
  onLead,
  onPart,
  onTidy,
  onClose,
}: ListPanelProps) {
  const carries = hand.is === 'lead' || hand.is === 'end';
  return (
    <Panel title={editorWords().partsLugsAndLeads} onClose={onClose}>
      {circuit.parts.length === 0 && <p class="soft">{editorWords().nothingIsPlacedYet}</p>}
      {circuit.parts.map((part) => {
        const lugs = lugsOf(part);
        const leads = lugs.reduce((sum, lug) => sum + leadsFrom(circuit, lug).length, 0);
        return (
          <details key={part.id} class="list-part">
            <summary>
              <span>
                {called(part.title)}{' '}
                <span class="note">{editorWords().lugsAndLeads(lugs.length, leads)}</span>
              </span>
            </summary>
            <button type="button" class="quiet" onClick={() => onPart(part.id)}>
              {editorWords().changeThePart(part.title)}
            </button>
            <ul class="list-lugs">
              {lugs.map((lug) => (
                <li key={lug}>
                  <button
                    type="button"
                    class="lug"
                    aria-pressed={hand.is === 'lead' && hand.from === lug}
                    aria-label={editorWords()[carries ? 'leadToLug' : 'leadFromLug'](
                      lugWords(circuit, lug),
                    )}
                    onClick={() => onLug(lug)}
                  >
                    {lugName(lug)}
                  </button>
                  <ul>
                    {leadsFrom(circuit, lug).map(({ lead, other }) => (
                      <li key={lead.id}>
                        <button type="button" class="quiet" onClick={() => onLead(lead.id)}>
                          {lead.colour
                            ? editorWords().colourTo(called(lead.colour), lugWords(circuit, other))
                            : editorWords().to(lugWords(circuit, other))}
                        </button>
                      </li>
                    ))}
                  </ul>
                </li>
              ))}
            </ul>
          </details>
        );
      })}
      {circuit.parts.length > 1 && hand.is === 'free' && (
        <button type="button" class="plain" onClick={onTidy}>
          {editorWords().tidyTheDrawing}
        </button>
      )}
    </Panel>
  );
}
