import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { Circuit } from '../../circuit/circuit.ts';
import { askKey } from '../../diagnosis/ask-key.ts';
import type { JackRow } from '../../diagnosis/card-jack.ts';
import type { CardLine } from '../../diagnosis/card-lines.ts';
import type { Stand } from '../../diagnosis/card-stands.ts';
import type { Ask } from '../../readings/reading.ts';
import { called } from '../../words/called.ts';
import { cardWords } from '../../words/en/card.ts';
import { heardWords, standWords } from '../card-words.ts';
import { pointWords } from '../words.ts';
import { type CardContext, Row } from './card-row.tsx';

interface JackTableProps {
  readonly rows: readonly JackRow[];
  /** How many of them, from the first. */
  readonly shown: number;
  readonly context: CardContext;
}

/** The jack in every way the switches may stand, knobs up and down side by side. */
export function JackTable({ rows, shown, context }: JackTableProps) {
  // Rows that stand are not gone through again when more of them come.
  const none = { of: rows, context, rows: [] as ComponentChildren[] };
  const made = useRef(none);
  if (made.current.context !== context || made.current.of !== rows) made.current = none;
  for (const row of rows.slice(made.current.rows.length, shown)) {
    const ways = standsWords(context.circuit, row.stands);
    made.current.rows.push(
      <Row
        key={askKey(row.atTen.ask)}
        title={ways || heardWords(context.circuit, row)}
        note={ways ? heardWords(context.circuit, row) : ''}
        more={
          row.merged > 1
            ? cardWords().mergedFiguresInSettingsSettings(row.merged, row.settings)
            : ''
        }
        cells={[row.atTen, row.atZero]}
        columns={[cardWords().knobsAt10, cardWords().knobsAt0]}
        context={context}
      />,
    );
  }
  return (
    <div class="table-room">
      <table class="card-table">
        <thead>
          <tr>
            <th scope="col">{cardWords().switches}</th>
            <th scope="col">{cardWords().knobsAt10}</th>
            <th scope="col">{cardWords().knobsAt0}</th>
          </tr>
        </thead>
        <tbody>{[...made.current.rows]}</tbody>
      </table>
    </div>
  );
}

interface LinesTableProps {
  readonly title: string;
  readonly how: string;
  readonly lines: readonly CardLine[];
  readonly context: CardContext;
}

/** Pairs of lugs, one figure each; folded away on the screen until they are wanted, never on paper. */
export function LinesTable({ title, how, lines, context }: LinesTableProps) {
  const [shown, setShown] = useState(false);
  if (lines.length === 0) return null;
  const { circuit } = context;
  return (
    <section class="card-part places">
      <h2>
        <button
          type="button"
          class="places-head"
          aria-expanded={shown}
          onClick={() => setShown(!shown)}
        >
          <span>{title}</span>
          <span class="soft">{lines.length}</span>
        </button>
      </h2>
      <div class={shown ? undefined : 'card-folded'}>
        <p class="soft">{how}</p>
        <div class="table-room">
          <table class="card-table">
            <tbody>
              {lines.map(({ group, title: name, cell, stands }) => (
                <Row
                  key={askKey(cell.ask)}
                  title={group === 'switches' ? contactWords(circuit, cell.ask) : called(name)}
                  note={
                    group === 'grounds' || group === 'small'
                      ? ''
                      : lineWords(circuit, group, cell.ask, stands)
                  }
                  more=""
                  cells={[cell]}
                  context={context}
                />
              ))}
            </tbody>
          </table>
        </div>
      </div>
    </section>
  );
}

/** More ways than this are counted, not told. */
const TOLD = 2;

function standsWords(circuit: Circuit, stands: readonly Stand[], named = false): string {
  const told = stands
    .slice(0, TOLD)
    .map((stand) => standWords(circuit, stand, named))
    .filter(Boolean);
  const more = stands.length - TOLD;
  return cardWords().ways([...told, ...(more > 0 ? [cardWords().moreMoreWays(more)] : [])]);
}

/** "selector, A to AC": both lugs by name, the switch once. */
function contactWords(circuit: Circuit, ask: Ask): string {
  if (!('red' in ask)) return '';
  const [a = '', b = ''] = [ask.red, ask.black].map((lug) => lug.slice(lug.indexOf('.') + 1));
  const id = ask.red.slice(0, ask.red.indexOf('.'));
  return cardWords().findLugAToLugB(
    called(circuit.parts.find((part) => part.id === id)?.title ?? id),
    a,
    b,
  );
}

function lineWords(
  circuit: Circuit,
  group: CardLine['group'],
  ask: Ask,
  stands: readonly Stand[],
): string {
  const stand = standsWords(circuit, stands, true);
  if (group === 'switches') return stand;
  const points = 'red' in ask && group !== 'knobs' ? lugsWords(circuit, ask.red, ask.black) : '';
  return [points, stand].filter(Boolean).join('; ');
}

/** "lug 3 of the volume to its case" on one part, both in full on two. */
function lugsWords(circuit: Circuit, red: string, black: string): string {
  const [part, lug] = black.split('.') as [string, string];
  const first = pointWords(circuit, red);
  if (red.slice(0, red.indexOf('.')) !== part)
    return cardWords().pointToPoint(first, pointWords(circuit, black));
  const same = lug === 'case' || lug === 'frame' ? cardWords().itsLug[lug] : cardWords().lug(lug);
  return cardWords().pointToPoint(first, same);
}
