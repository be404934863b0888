import type { ComponentChildren } from 'preact';
import { Fragment } from 'preact';

export interface TableRow {
  readonly key: string;
  readonly head: ComponentChildren;
  readonly cells: readonly ComponentChildren[];
  /** In words of their own beneath the row. */
  readonly below?: readonly string[];
  readonly class?: string | undefined;
  readonly data?: Readonly<Record<`data-${string}`, string | boolean>>;
}

interface TableProps {
  readonly title?: string;
  /** Over the heads of the rows, then over each cell. */
  readonly columns?: readonly string[];
  readonly rows: readonly TableRow[];
}

/**
 * Rows with a head and a few cells. Where the type is large for the width each row becomes a block, and each cell says its column
 * (WCAG 2.2, 1.4.10: nothing scrolls two ways at 320 CSS pixels).
 */
export const Table = ({ title, columns = [], rows }: TableProps) => (
  <div class="table-room">
    <table class="grounds">
      {title && <caption>{title}</caption>}
      {columns.length > 0 && (
        <thead>
          <tr>
            {columns.map((column) =>
              column ? (
                <th key={column} scope="col">
                  {column}
                </th>
              ) : (
                <td key="corner" />
              ),
            )}
          </tr>
        </thead>
      )}
      <tbody>
        {rows.map(({ key, head, cells, below = [], class: kind, data }) => (
          <Fragment key={key}>
            <tr class={kind} {...data}>
              <th scope="row">{head}</th>
              {cells.map((cell, at) => (
                <td key={columns[at + 1] ?? at} data-column={columns[at + 1]}>
                  {cell}
                </td>
              ))}
            </tr>
            {below.map((words) => (
              <tr key={words} class="below">
                <td colSpan={cells.length + 1}>{words}</td>
              </tr>
            ))}
          </Fragment>
        ))}
      </tbody>
    </table>
  </div>
);
