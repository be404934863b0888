import { useEffect, useRef, useState } from 'preact/hooks';
import type { Circuit } from '../../circuit/circuit.ts';
import type { Part, PartId } from '../../circuit/parts/part.ts';
import { type ValueFault, valueRows, withValues } from '../entry/value-text.ts';
import { ValuesFields } from '../entry/values-fields.tsx';
import type { SketchAct } from './sketch.ts';

interface PartValuesProps {
  readonly circuit: Circuit;
  readonly parts: ReadonlySet<PartId>;
  onAct(act: SketchAct): void;
}

/** What the second has otherwise than the first. */
const differing = (before: Part, after: Part): Partial<Part> =>
  Object.fromEntries(
    Object.entries(after).filter(
      ([key, value]) => JSON.stringify(value) !== JSON.stringify(before[key as keyof Part]),
    ),
  );

/** The values of some parts, as printed and as measured; each is kept when its field is left. */
export function PartValues({ circuit, parts, onAct }: PartValuesProps) {
  const some = { ...circuit, parts: circuit.parts.filter(({ id }) => parts.has(id)) };
  const newest = useRef(circuit);
  newest.current = circuit;
  const kept = valueRows(some);
  // A new name is no new value: it must not take back what is being typed.
  const valuesOf = (some: typeof kept) =>
    JSON.stringify(some.map((row) => ({ ...row, title: '' })));
  const key = valuesOf(kept);
  const [rows, setRows] = useState(kept);
  // What was typed last: a choice is heard here in the same moment as by its own field.
  const typed = useRef(rows);
  const take = (next: typeof rows) => {
    typed.current = next;
    setRows(next);
  };
  const [faults, setFaults] = useState<readonly ValueFault[]>([]);
  // Undo and a change of the part come from elsewhere.
  useEffect(() => {
    take(kept);
    setFaults([]);
  }, [key]);
  const keep = async () => {
    if (valuesOf(typed.current) === key) return;
    const result = await withValues(some, typed.current);
    setFaults('faults' in result ? result.faults : []);
    if ('faults' in result) return;
    for (const part of result.circuit.parts) {
      const before = some.parts.find(({ id }) => id === part.id);
      // A sum takes a while the first time: what else was changed on the part meanwhile stays, and a part taken away stays away.
      const now = newest.current.parts.find(({ id }) => id === part.id);
      if (before && now && JSON.stringify(before) !== JSON.stringify(part))
        onAct({ do: 'change', part: { ...now, ...differing(before, part) } as Part });
    }
  };
  if (rows.length === 0) return null;
  const titled = rows.map((row) => ({
    ...row,
    title: kept.find(({ part }) => part === row.part)?.title ?? row.title,
  }));
  return (
    <div
      class={rows.length === 1 ? 'values-one' : undefined}
      onChange={(event) => event.target instanceof HTMLSelectElement && keep()}
      onFocusOut={keep}
    >
      <ValuesFields rows={titled} faults={faults} onRows={take} />
    </div>
  );
}
