/** One plot of a simulator's binary raw file: values[variable][point], complex ones as pairs. */
export interface RawPlot {
  readonly variables: readonly string[];
  readonly points: number;
  readonly complex: boolean;
  /** Row by row: points x variables, twice as many numbers when complex. */
  readonly values: Float64Array;
}

/** Reads every plot of a raw file that was written with `set filetype=binary`. Throws on a cut-off file. */
export function readRawFile(file: Buffer): RawPlot[] {
  const plots: RawPlot[] = [];
  const marker = Buffer.from('Binary:\n');
  let at = 0;
  while (at < file.length) {
    const headEnd = file.indexOf(marker, at);
    if (headEnd < 0) throw new Error('raw file: a plot without its data');
    const head = file.toString('latin1', at, headEnd);
    const field = (name: string) => {
      const match = new RegExp(`^${name}: *(.*)$`, 'm').exec(head);
      if (!match) throw new Error(`raw file: no field ${name}`);
      return match[1]!.trim();
    };
    const count = Number(field('No. Variables'));
    const points = Number(field('No. Points'));
    const complex = field('Flags').includes('complex');
    const variables = head
      .slice(head.indexOf('Variables:\n') + 11)
      .split('\n')
      .slice(0, count)
      .map((line) => line.trim().split(/\s+/)[1]!);
    const start = headEnd + marker.length;
    const bytes = count * points * (complex ? 16 : 8);
    if (start + bytes > file.length) throw new Error('raw file: cut off');
    // Copied, because a view on float64 must start at a multiple of 8 bytes.
    const values = new Float64Array(new Uint8Array(file.subarray(start, start + bytes)).buffer);
    plots.push({ variables, points, complex, values });
    at = start + bytes;
  }
  return plots;
}
