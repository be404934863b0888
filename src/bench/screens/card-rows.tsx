import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Circuit } from '../../circuit/circuit.ts';
import { askKey } from '../../diagnosis/ask-key.ts';
import type { ReadingReport } from '../../diagnosis/assessment.ts';
import type { CardCell } from '../../diagnosis/card-cell.ts';
import type { JackRow } from '../../diagnosis/card-jack.ts';
import type { CardLine } from '../../diagnosis/card-lines.ts';
import type { Stand } from '../../diagnosis/card-stands.ts';
import type { Ask } from '../../readings/reading.ts';
import { called } from '../../words/called.ts';
import { cardWords } from '../../words/en/card.ts';
import { cellWords, heardWords, standWords } from '../card-words.ts';
import { ControlsStrip } from '../drawings/index.ts';
import { lieOf } from '../lie.ts';
import { AskWords, IronWork } from '../pieces/ask-words.tsx';
import { Expected } from '../pieces/expected.tsx';
import { Mark } from '../pieces/mark.tsx';
import { capital, held, pointWords } from '../words.ts';

/** What the rows of a card share. */
export interface CardContext {
  readonly circuit: Circuit;
  /** Readings of the job, newest last. */
  readonly reports: readonly ReadingReport[];
  /** The ask whose panel is open. */
  readonly open: Ask | null;
  readonly closed: boolean;
  onOpen(ask: Ask | null): void;
  /** `hunt`: the figure differs, and the hunt goes on from it. */
  onTake(ask: Ask, then: 'card' | 'hunt'): void;
}

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

interface RowProps {
  readonly title: string;
  readonly note: string;
  readonly more: string;
  readonly cells: readonly CardCell[];
  /** Said in each cell where it stands alone in its line. */
  readonly columns?: readonly string[];
  readonly context: CardContext;
}

function Row({ title, note, more, cells, columns = [], context }: RowProps) {
  const { open } = context;
  const opened = open && cells.find(({ ask }) => askKey(ask) === askKey(open));
  return (
    <>
      <tr>
        <th scope="row">
          <span class="says">{capital(title)}</span>
          {note && <span class="note">{capital(note)}</span>}
          {more && <span class="note">{more}</span>}
        </th>
        {cells.map((cell, at) => (
          <td key={askKey(cell.ask)} data-column={columns[at]}>
            <Figure cell={cell} title={title} context={context} />
          </td>
        ))}
      </tr>
      {opened && (
        <tr class="card-panel">
          <td colSpan={cells.length + 1}>
            <Panel cell={opened} context={context} />
          </td>
        </tr>
      )}
    </>
  );
}

/** A figure to tap. What was read there stands beside it. */
function Figure({
  cell,
  title,
  context: { reports, open, onOpen },
}: {
  readonly cell: CardCell;
  readonly title: string;
  readonly context: CardContext;
}) {
  const { figure, notes } = cellWords(cell);
  const key = askKey(cell.ask);
  const isOpen = open !== null && askKey(open) === key;
  const read = reports.findLast(({ ask, stale }) => !stale && askKey(ask) === key);
  return (
    <button
      type="button"
      class="card-figure"
      aria-expanded={isOpen}
      onClick={() => onOpen(isOpen ? null : cell.ask)}
    >
      <span class="unseen">{title}: </span>
      <span class="says">{figure}</span>
      {notes.map((note) => (
        <span key={note} class="note">
          {note}
        </span>
      ))}
      {read && <Read report={read} />}
    </button>
  );
}

const Read = ({ report: { measuredText, fits } }: { readonly report: ReadingReport }) => (
  <span class="card-read">
    {held(measuredText)} <Mark fits={fits} short />
  </span>
);

/** How to take the reading, and what to say of it. */
function Panel({
  cell: { ask, expected, beeps },
  context,
}: {
  cell: CardCell;
  context: CardContext;
}) {
  const { circuit, closed, onTake } = context;
  const panel = useRef<HTMLDivElement>(null);
  useEffect(() => panel.current?.scrollIntoView({ block: 'nearest' }), []);
  const act: ComponentChildren = 'red' in ask && (
    <AskWords
      words={cardWords()[ask.kind === 'turn' ? 'turnTheKnob' : 'probes'](
        pointWords(circuit, ask.red),
        pointWords(circuit, ask.black),
      )}
    />
  );
  return (
    <div class="card-how" ref={panel}>
      <ControlsStrip
        circuit={circuit}
        setting={ask.setting}
        previous={null}
        leftHanded={lieOf(circuit).leftHanded}
      />
      <IronWork circuit={circuit} setting={ask.setting} previous={null} />
      <p>{act}</p>
      <p>
        <span class="soft">{cardWords().healthy}</span>{' '}
        <strong>
          <Expected expected={expected} />
        </strong>
        {beeps !== 'no' && (beeps === 'yes' ? cardWords().andItBeeps : cardWords().orItBeeps)}
      </p>
      {closed ? (
        <p class="soft">{cardWords().thisJobIsClosedTakeItUp}</p>
      ) : (
        <div class="row">
          <button type="button" class="plain" onClick={() => onTake(ask, 'card')}>
            {cardWords().enterWhatItReads}
          </button>
          <button type="button" class="plain" onClick={() => onTake(ask, 'hunt')}>
            {cardWords().itReadsSomethingElse}
          </button>
        </div>
      )}
    </div>
  );
}
