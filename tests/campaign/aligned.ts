/** A table whose columns are as wide as their widest cell; the first row is its head. */
export function aligned(rows: readonly (readonly [string, string])[]): string {
  const widths = [0, 1].map((at) => Math.max(...rows.map((row) => (row[at] as string).length)));
  const line = (cells: readonly string[], fill = ' ') =>
    `| ${cells.map((cell, at) => cell.padEnd(widths[at] as number, fill)).join(' | ')} |\n`;
  return rows.map((row, at) => line(row) + (at === 0 ? line(['', ''], '-') : '')).join('');
}
