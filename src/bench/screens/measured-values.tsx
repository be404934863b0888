import type { Circuit } from '../../circuit/circuit.ts';
import { formatFarads, formatOhms } from '../../readings/entry.ts';
import { called } from '../../words/called.ts';
import { keepingWords } from '../../words/en/keeping.ts';
import { Table } from '../pieces/table.tsx';

interface Row {
  readonly id: string;
  readonly title: string;
  readonly printed: string;
  readonly measured: string;
}

/** Values that were measured with the part unsoldered; nothing where there are none. */
export function MeasuredValues({ circuit }: { circuit: Circuit }) {
  const rows = circuit.parts.flatMap((part): readonly Row[] => {
    const base = { id: part.id, title: called(part.title) };
    if ('ohms' in part) {
      const { nominal, measured, measuredOpen } = part.ohms;
      if (measured === undefined && !measuredOpen) return [];
      const shown = measured === undefined ? keepingWords().open : formatOhms(measured);
      return [{ ...base, printed: formatOhms(nominal), measured: shown }];
    }
    if ('farads' in part && part.farads.measured !== undefined) {
      const { nominal, measured } = part.farads;
      return [{ ...base, printed: formatFarads(nominal), measured: formatFarads(measured) }];
    }
    return [];
  });
  if (rows.length === 0) return null;
  return (
    <Table
      title={keepingWords().measuredParts}
      columns={[keepingWords().part, keepingWords().asPrinted, keepingWords().measured]}
      rows={rows.map(({ id, title, printed, measured }) => ({
        key: id,
        head: title,
        cells: [printed, measured],
      }))}
    />
  );
}
