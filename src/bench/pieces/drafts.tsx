import { useEffect, useState } from 'preact/hooks';
import type { WiringDraft } from '../../notebook/draft.ts';
import { called } from '../../words/called.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { dateText } from '../../words/figures.ts';
import { usePorts } from '../ports.ts';
import { hrefOf } from '../route.ts';

/** Wirings that were begun on the drawing board. Nothing where there are none. */
export function Drafts() {
  const { drafts } = usePorts();
  const [begun, setBegun] = useState<readonly WiringDraft[]>([]);
  // Nothing drawn goes by one slip of a thumb.
  const [doubted, setDoubted] = useState<string | null>(null);
  const look = () => drafts.list().then(setBegun);
  useEffect(() => {
    void look();
  }, [drafts]);
  if (begun.length === 0) return null;
  return (
    <>
      <h2>{pieceWords().onTheDrawingBoard}</h2>
      <ul class="list">
        {begun.map(({ id, title, now, changedAt }) => (
          <li key={id} class="draft">
            <a class="list-row" href={hrefOf({ at: 'draw', id })}>
              <span class="says">{nameOf(title, now.circuit.title)}</span>
              <span class="note">
                {pieceWords().drawing(
                  now.circuit.parts.length,
                  now.circuit.leads.length,
                  dateText(changedAt),
                )}
              </span>
            </a>
            <button
              type="button"
              class={doubted === id ? 'quiet danger' : 'quiet'}
              aria-label={pieceWords()[doubted === id ? 'reallyThrowAway' : 'throwAwayDrawing'](
                nameOf(title, now.circuit.title),
              )}
              onClick={() => (doubted === id ? drafts.remove(id).then(look) : setDoubted(id))}
            >
              {doubted === id ? pieceWords().really : pieceWords().throwAway}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

const nameOf = (title: string, wiring: string): string => title || called(wiring);
