import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Circuit } from '../../circuit/circuit.ts';
import { askKey } from '../../diagnosis/ask-key.ts';
import type { ReadingReport } from '../../diagnosis/assessment.ts';
import type { CardCell } from '../../diagnosis/card-cell.ts';
import type { Ask } from '../../readings/reading.ts';
import { cardWords } from '../../words/en/card.ts';
import { cellWords } from '../card-words.ts';
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

interface RowProps {
  readonly title: string;
  readonly note: string;
  readonly more: string;
  readonly cells: readonly CardCell[];
  /** Said in each cell where it stands alone in its line. */
  readonly columns?: readonly string[];
  readonly context: CardContext;
}

/** What is read in one place, one figure a cell, and how to read it where a figure is open. */
export function Row({ title, note, more, cells, columns = [], context }: RowProps) {
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
