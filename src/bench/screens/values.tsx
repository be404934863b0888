import { useMemo, useState } from 'preact/hooks';
import type { Job } from '../../notebook/job.ts';
import { meter as meterShape } from '../../notebook/job-shape.ts';
import { object, text } from '../../notebook/shape.ts';
import { deskWords } from '../../words/en/desk.ts';
import { MeterFields } from '../entry/meter-fields.tsx';
import {
  newlyOdd,
  type ValueFault,
  type ValueRow,
  valueRows,
  warmthFrom,
  warmthText,
  withValues,
} from '../entry/value-text.ts';
import { ValuesFields } from '../entry/values-fields.tsx';
import type { Say } from '../hunt-actor.ts';
import { announce } from '../pieces/announce.tsx';
import { KeptNote } from '../pieces/kept-note.tsx';
import { Redraw } from '../pieces/redraw.tsx';
import { Screen } from '../pieces/screen.tsx';
import { go, hrefOf } from '../route.ts';
import { useHalfTold } from '../use-half-told.ts';
import { rowsOn, rowsShape } from './told-job.ts';

interface ValuesProps {
  readonly strip: preact.ComponentChildren;
  readonly job: Job;
  readonly say: Say;
}

interface Told {
  /** Null while nobody has touched one. */
  readonly rows: readonly ValueRow[] | null;
  readonly meter: Job['meter'];
  readonly room: string;
}
const toldShape = object({
  rows: (value, place) => value === null || rowsShape(value, place),
  meter: meterShape,
  room: text(() => '', 40),
});

/** The parts as they really are; every reading is judged again by them. */
export function Values({ strip, job, say }: ValuesProps) {
  const stored = useMemo(() => valueRows(job.circuit), [job.circuit]);
  const half = useHalfTold<Told>(
    `values/${job.id}`,
    () => ({ rows: null, meter: job.meter, room: warmthText(job.meter.room) }),
    toldShape,
  );
  const { meter, room } = half.told;
  const rows = rowsOn(job.circuit, half.told.rows) ?? stored;
  const tell = (more: Partial<Told>) => half.tell((now) => ({ ...now, ...more }));
  const [faults, setFaults] = useState<readonly ValueFault[]>([]);
  const [odd, setOdd] = useState<readonly string[]>([]);
  const warmth = warmthFrom(room);
  const store = async () => {
    const result = await withValues(job.circuit, rows);
    const wrong = 'faults' in result ? result.faults[0]?.sentence : undefined;
    setFaults('faults' in result ? result.faults : []);
    if ('faults' in result || typeof warmth === 'string') {
      announce(wrong ?? String(warmth));
      return;
    }
    const strange = newlyOdd(job.circuit, result.circuit);
    if (strange.length > 0 && strange.join() !== odd.join()) {
      setOdd(strange);
      announce(strange.join('; '));
      window.scrollTo(0, 0);
      return;
    }
    const { room: _, ...rest } = meter;
    const told = warmth === undefined ? rest : { ...rest, room: warmth };
    half.done();
    say({ type: 'CORRECT', circuit: result.circuit, meter: told });
    go({ at: 'job', id: job.id, view: 'hunt' });
  };
  return (
    <Screen
      name="values"
      title={deskWords().valuesAndMeter}
      strip={strip}
      acts={
        <>
          <a class="plain" href={hrefOf({ at: 'job', id: job.id, view: 'hunt' })}>
            {deskWords().back}
          </a>
          <button type="button" class="main" onClick={store}>
            {odd.length > 0 ? deskWords().keepThemAllTheSame : deskWords().keepThese}
          </button>
        </>
      }
    >
      <KeptNote told={half} />
      {faults.length > 0 && <p role="alert">{faults[0]?.sentence}</p>}
      {odd.length > 0 && <p role="alert">{deskWords().farOffOddRightSoThenIt(odd.join('; '))}</p>}
      <p class="soft">{deskWords().typeValuesAsIn500k74k}</p>
      <fieldset class="options">
        <legend>{deskWords().yourMeter}</legend>
        <MeterFields meter={meter} onMeter={(next) => tell({ meter: next })} />
        <label class="field">
          <span>{deskWords().roomC}</span>
          <input
            value={room}
            placeholder={deskWords().notKnown}
            autocomplete="off"
            aria-invalid={typeof warmth === 'string'}
            onInput={({ currentTarget }) => tell({ room: currentTarget.value })}
          />
          {typeof warmth === 'string' && <span class="field-fault">{warmth}</span>}
        </label>
      </fieldset>
      <ValuesFields rows={rows} faults={faults} onRows={(next) => tell({ rows: next })} />
      <Redraw job={job} />
    </Screen>
  );
}
