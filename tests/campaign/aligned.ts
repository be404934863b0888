/** A table whose columns are as wide as their widest cell; the first row is its head, and all rows are as long. */
export function aligned(rows: readonly (readonly string[])[]): string {
  const head = rows[0] ?? [];
  const widths = head.map((_, at) => Math.max(...rows.map((row) => row[at]?.length ?? 0)));
  const line = (cells: readonly string[], fill = ' ') =>
    `| ${cells.map((cell, at) => cell.padEnd(widths[at] as number, fill)).join(' | ')} |\n`;
  const rule = line(
    head.map(() => ''),
    '-',
  );
  return rows.map((row, at) => line(row) + (at === 0 ? rule : '')).join('');
}
