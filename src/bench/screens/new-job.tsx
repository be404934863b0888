import { Fragment } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { families, startingWirings } from '../../circuit/catalog/index.ts';
import { type Change, compose } from '../../circuit/catalog/modifications/compose.ts';
import { leftHandedPots } from '../../circuit/catalog/modifications/left-handed-pots.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import { begunJob } from '../../notebook/begun-job.ts';
import { called } from '../../words/called.ts';
import { deskWords } from '../../words/en/desk.ts';
import { startDrawing } from '../editor/new-draft.ts';
import { usualMeter } from '../entry/meter-fields.tsx';
import { carried, type ValueFault, valueRows, withValues } from '../entry/value-text.ts';
import { ValuesFields } from '../entry/values-fields.tsx';
import { useGrowing } from '../growing.ts';
import { useOnce } from '../once.ts';
import { announce } from '../pieces/announce.tsx';
import { KeptNote } from '../pieces/kept-note.tsx';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { go, hrefOf, type JobView } from '../route.ts';
import { useHalfTold } from '../use-half-told.ts';
import { capital } from '../words.ts';
import { Modifications } from './modifications.tsx';
import {
  mirroredBy,
  rowsOn,
  type ToldJob,
  toldChanges,
  toldJobShape,
  wiringOf,
} from './told-job.ts';

/** Wirings that come together, below those that are above the fold. */
const TOGETHER = 5;
const inOrder = families.flatMap((family) =>
  startingWirings.filter((one) => one.family === family),
);
/** Name and ticks; the wirings; what lies below them, and would move away while they come. */
const PIECES = 1 + Math.ceil(inOrder.length / TOGETHER) + 1;
const build = (wiring: string) => startingWirings.find(({ id }) => id === wiring)?.build();

const nothing = (): ToldJob => ({
  wiring: startingWirings[0]?.id ?? '',
  title: '',
  access: 'closed',
  changes: [],
  rows: null,
});

/** A job begins with the wiring that was intended; values can be set right now or later. */
export function NewJob({ view = 'hunt' }: { view?: JobView }) {
  const ports = usePorts();
  const pieces = useGrowing(PIECES);
  const [unfolded, setUnfolded] = useState(false);
  const half = useHalfTold<ToldJob>('guitar', nothing, toldJobShape);
  const { title, access, wiring } = half.told;
  const tell = (more: Partial<ToldJob>) => half.tell((now) => ({ ...now, ...more }));
  const { base, changes, circuit } = useMemo(
    () => wiringOf(build(wiring), half.told.changes),
    [wiring, half.told.changes],
  );
  const rows = rowsOn(circuit, half.told.rows);
  const [faults, setFaults] = useState<readonly ValueFault[]>([]);
  const [failure, setFailure] = useState<string | null>(null);

  const leftHanded = changes.some(({ modification }) => modification === leftHandedPots);

  const choose = (id: string) => {
    const next = build(id);
    // Which hand it is for does not hang on the wiring.
    const kept = next && leftHanded ? mirroredBy(next) : [];
    tell({ wiring: id, changes: toldChanges(kept), rows: null });
    setFaults([]);
  };

  const change = (from: Circuit, next: readonly Change[]) => {
    const changed = compose(from, next).circuit;
    tell({
      changes: toldChanges(next),
      rows: rows && circuit ? carried(rows, valueRows(circuit), valueRows(changed)) : null,
    });
  };

  const start = useOnce(async (view: JobView) => {
    if (!circuit) return;
    const result = await withValues(circuit, rows ?? []);
    if ('faults' in result) {
      setFaults(result.faults);
      announce(result.faults[0]?.sentence ?? '');
      return;
    }
    const job = begunJob(
      {
        id: ports.newId(),
        title: title.trim() || deskWords().myGuitar,
        circuit: result.circuit,
        meter: usualMeter,
        access,
      },
      ports.now(),
    );
    try {
      await ports.notebook.write(job);
      half.done();
      go({ at: 'job', id: job.id, view });
    } catch (error) {
      setFailure(error instanceof Error ? error.message : deskWords().theJobCouldNotBeStored);
    }
  });

  /** With the values typed so far; a drawing from nothing takes none of them. */
  const draw = useOnce(async (from: Circuit | undefined) => {
    const result = from ? await withValues(from, rows ?? []) : null;
    if (result && 'faults' in result) {
      setFaults(result.faults);
      announce(result.faults[0]?.sentence ?? '');
      return;
    }
    await startDrawing(ports, {
      title: title.trim(),
      access,
      ...(result && { circuit: result.circuit }),
    });
    half.done();
  });

  return (
    <Screen
      name="new-job"
      title={deskWords().yourGuitar}
      acts={
        <>
          <a class="plain" href={hrefOf({ at: 'home' })}>
            {deskWords().back}
          </a>
          <button type="button" class="plain" onClick={() => start('card')}>
            {deskWords().readingCard}
          </button>
          <button type="button" class="main" onClick={() => start(view)}>
            {deskWords().start}
          </button>
        </>
      }
    >
      {failure && (
        <p role="alert" class="sentence">
          {failure}
        </p>
      )}
      <KeptNote told={half} />
      {faults.length > 0 && (
        <p role="alert" class="sentence">
          {faults[0]?.sentence}
        </p>
      )}
      <label class="field-tall">
        <span>{deskWords().yourNameForTheGuitar}</span>
        <input
          value={title}
          placeholder={deskWords().myGuitar}
          maxLength={80}
          onInput={({ currentTarget }) => tell({ title: currentTarget.value })}
        />
      </label>
      <label class="tick">
        <input
          type="checkbox"
          checked={access === 'open'}
          onChange={({ currentTarget }) =>
            tell({ access: currentTarget.checked ? 'open' : 'closed' })
          }
        />
        {deskWords().itIsOpenAlready}
      </label>
      {base && mirroredBy(base).length > 0 && (
        <label class="tick">
          <input
            type="checkbox"
            checked={leftHanded}
            onChange={({ currentTarget }) =>
              change(base, [
                ...changes.filter(({ modification }) => modification !== leftHandedPots),
                ...(currentTarget.checked ? mirroredBy(base) : []),
              ])
            }
          />
          {deskWords().itIsLeftHanded}
        </label>
      )}
      <fieldset class="options">
        <legend>{deskWords().whichWiringShouldItHave}</legend>
        {inOrder.slice(0, TOGETHER * (pieces - 1)).map(({ id, title: words, family }, at) => (
          <Fragment key={id}>
            {family !== inOrder[at - 1]?.family && (
              <h2 class="options-head">{deskWords()[family]}</h2>
            )}
            <label>
              <input
                type="radio"
                name="wiring"
                checked={id === wiring}
                onChange={() => choose(id)}
              />
              {capital(called(words))}
            </label>
          </Fragment>
        ))}
      </fieldset>
      {pieces === PIECES && (
        <>
          <p class="row">
            <button type="button" class="plain" onClick={() => draw(circuit)}>
              {deskWords().changeTheDrawing}
            </button>
            <button type="button" class="plain" onClick={() => draw(undefined)}>
              {deskWords().drawItYourself}
            </button>
          </p>
          {base && (
            <Modifications
              key={wiring}
              base={base}
              changes={changes}
              onChanges={(next) => change(base, next)}
            />
          )}
          {changes.length > 0 && circuit && <p class="soft">{capital(called(circuit.title))}.</p>}
          <details onToggle={({ currentTarget }) => setUnfolded(currentTarget.open)}>
            <summary>{deskWords().valuesOfItsParts}</summary>
            <p class="soft">{deskWords().usualValuesStandHereSetRight}</p>
            {unfolded && circuit && (
              <ValuesFields
                rows={rows ?? valueRows(circuit)}
                faults={faults}
                onRows={(next) => tell({ rows: next })}
              />
            )}
          </details>
        </>
      )}
    </Screen>
  );
}
