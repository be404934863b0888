import { useState } from 'preact/hooks';
import {
  lugCount,
  withJoin,
  withLugs,
  withoutLastPosition,
  withPosition,
} from '../../circuit/editing/contacts.ts';
import { MOST } from '../../circuit/limits.ts';
import type { Switch } from '../../circuit/parts/part.ts';
import { called } from '../../words/called.ts';
import { editorWords } from '../../words/en/editor.ts';
import { capital } from '../words.ts';

interface ContactFieldsProps {
  readonly part: Switch;
  onPart(part: Switch): void;
}

/** A contact table of the person's own: how many lugs there are, and which are joined in each position. */
export function ContactFields({ part, onPart }: ContactFieldsProps) {
  const { rows, columns } = lugCount(part);
  return (
    <details class="contacts">
      <summary>{editorWords().lugsAndWhatTheyJoin}</summary>
      <div class="row">
        <Count
          title={editorWords().rowsOfLugs}
          now={rows}
          most={Math.min(8, MOST.rows)}
          onCount={(count) => onPart(withLugs(part, { rows: count, columns }))}
        />
        <Count
          title={editorWords().lugsInARow}
          now={columns}
          most={12}
          onCount={(count) => onPart(withLugs(part, { rows, columns: count }))}
        />
      </div>
      {part.positions.map(({ name, title, joins }, at) => (
        <fieldset key={name} class="joins">
          <legend>{editorWords().positionJoins(capital(called(title)))}</legend>
          {joins.length === 0 && <p class="soft">{editorWords().joinsNothing}</p>}
          <ul>
            {joins.map(([a, b]) => (
              <li key={`${a}-${b}`}>
                <span>
                  {a} – {b}
                </span>
                <button
                  type="button"
                  class="quiet"
                  aria-label={editorWords().partLugFromLug(a, b, title)}
                  onClick={() => onPart(withJoin(part, at, a, b, false))}
                >
                  {editorWords().partThem}
                </button>
              </li>
            ))}
          </ul>
          <NewJoin
            part={part}
            title={title}
            onJoin={(a, b) => onPart(withJoin(part, at, a, b, true))}
          />
        </fieldset>
      ))}
      <div class="row">
        <button
          type="button"
          class="plain"
          disabled={part.positions.length >= MOST.positions}
          onClick={() => onPart(withPosition(part))}
        >
          {editorWords().onePositionMore}
        </button>
        <button
          type="button"
          class="plain"
          disabled={part.positions.length < 2}
          onClick={() => onPart(withoutLastPosition(part))}
        >
          {editorWords().oneLess}
        </button>
      </div>
    </details>
  );
}

interface CountProps {
  readonly title: string;
  readonly now: number;
  readonly most: number;
  onCount(count: number): void;
}

const Count = ({ title, now, most, onCount }: CountProps) => (
  <label class="field-tall">
    <span>{title}</span>
    <select
      value={String(now)}
      onChange={({ currentTarget }) => onCount(Number(currentTarget.value))}
    >
      {Array.from({ length: Math.max(most, now) }, (_, at) => String(at + 1)).map((count) => (
        <option key={count} value={count}>
          {count}
        </option>
      ))}
    </select>
  </label>
);

interface NewJoinProps {
  readonly part: Switch;
  readonly title: string;
  onJoin(a: string, b: string): void;
}

/** Two lugs to be joined. */
function NewJoin({ part, title, onJoin }: NewJoinProps) {
  const lugs = part.rows.flat();
  const [ends, setEnds] = useState<readonly [string, string]>([lugs[0] ?? '', lugs[1] ?? '']);
  const [a, b] = ends.map((lug, at) => (lugs.includes(lug) ? lug : (lugs[at] ?? '')));
  return (
    <div class="row new-join">
      {([a, b] as const).map((lug, at) => (
        <select
          key={at === 0 ? 'from' : 'to'}
          aria-label={
            at === 0 ? editorWords().lugToJoin(title) : editorWords().otherLugToJoin(title)
          }
          value={lug}
          onChange={({ currentTarget: { value } }) =>
            setEnds(at === 0 ? [value, b ?? ''] : [a ?? '', value])
          }
        >
          {lugs.map((one) => (
            <option key={one} value={one}>
              {one}
            </option>
          ))}
        </select>
      ))}
      <button
        type="button"
        class="plain"
        aria-label={editorWords().joinThemIn(title)}
        disabled={a === b}
        onClick={() => a && b && onJoin(a, b)}
      >
        {editorWords().join}
      </button>
    </div>
  );
}
