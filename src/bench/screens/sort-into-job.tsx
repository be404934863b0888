import { useEffect, useState } from 'preact/hooks';
import { startingWirings } from '../../circuit/catalog/index.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import { begunJob } from '../../notebook/begun-job.ts';
import type { PickupSheet } from '../../notebook/index.ts';
import type { Job } from '../../notebook/job.ts';
import { putInto } from '../../sorter/into-circuit.ts';
import type { Sorting } from '../../sorter/sort.ts';
import { called } from '../../words/called.ts';
import { matWords } from '../../words/en/mat.ts';
import { useOnce } from '../once.ts';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { go, hrefOf } from '../route.ts';
import { nameOr, theTitled } from './pickup-names.ts';
import { leadNames } from './sort-words.ts';

interface SortIntoJobProps {
  readonly sheet: PickupSheet;
  readonly sorting: Sorting;
}

type Target = { readonly job: Job } | { readonly wiring: string };

/** The sorted pickup becomes part of a guitar's wiring, colours and ohms included. */
export function SortIntoJob({ sheet, sorting }: SortIntoJobProps) {
  const ports = usePorts();
  const [jobs, setJobs] = useState<readonly Job[]>([]);
  const [target, setTarget] = useState<Target>({ wiring: startingWirings[0]?.id ?? '' });
  const [place, setPlace] = useState('');
  const [turned, setTurned] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  useEffect(() => {
    openJobs(ports.notebook).then(setJobs, () => {
      // A new guitar can be begun all the same.
    });
  }, [ports]);
  const circuit = circuitOf(target);
  const places = circuit?.pickups ?? [];
  const chosen = places.find(({ id }) => id === place) ?? places[0];
  const sorted = { seen: sheet.seen, sorting, readings: sheet.readings, turned };
  const result = circuit && chosen ? putInto(circuit, chosen.id, sorted) : null;

  const put = useOnce(async () => {
    if (!result || 'refused' in result) return;
    const at = ports.now();
    const job: Job =
      'job' in target
        ? { ...target.job, circuit: result.circuit, changedAt: at }
        : begunJob(
            {
              id: ports.newId(),
              title: matWords()
                .guitarWithTheTitled(theTitled(nameOr(matWords().sortedPickup, sheet)))
                .slice(0, 200),
              circuit: result.circuit,
              meter: sheet.meter,
              access: 'open',
            },
            at,
          );
    try {
      await ports.notebook.write(job);
      go({ at: 'job', id: job.id, view: 'drawing' });
    } catch (error) {
      setFailure(error instanceof Error ? error.message : matWords().theGuitarCouldNotBeStored);
    }
  });
  return (
    <Screen
      name="sort-into-job"
      title={matWords().intoWhichGuitar}
      acts={
        <>
          <a class="plain" href={hrefOf({ at: 'pickup', id: sheet.id, view: 'sort' })}>
            {matWords().back}
          </a>
          <button
            type="button"
            class="main"
            disabled={!result || 'refused' in result}
            onClick={put}
          >
            {matWords().putItIn}
          </button>
        </>
      }
    >
      {failure && (
        <p role="alert" class="sentence">
          {failure}
        </p>
      )}
      <p>{matWords().fromThenOnTheHuntAndThe}</p>
      {jobs.length > 0 && (
        <fieldset class="options">
          <legend>{matWords().onTheBench}</legend>
          {jobs.map((job) => (
            <label key={job.id}>
              <input
                type="radio"
                name="target"
                checked={'job' in target && target.job.id === job.id}
                onChange={() => setTarget({ job })}
              />
              {job.title}
            </label>
          ))}
        </fieldset>
      )}
      <label class="field-tall">
        <span>
          {jobs.length > 0 ? matWords().orANewGuitarWiredAs : matWords().aNewGuitarWiredAs}
        </span>
        <select
          value={'wiring' in target ? target.wiring : ''}
          onChange={({ currentTarget }) =>
            currentTarget.value && setTarget({ wiring: currentTarget.value })
          }
        >
          {'job' in target && <option value="">{matWords().noneOfThese}</option>}
          {startingWirings.map(({ id, title }) => (
            <option key={id} value={id}>
              {called(title)}
            </option>
          ))}
        </select>
      </label>
      <fieldset class="options options-2">
        <legend>{matWords().inThePlaceOf}</legend>
        {places.map(({ id, title }) => (
          <label key={id}>
            <input
              type="radio"
              name="place"
              checked={chosen?.id === id}
              onChange={() => setPlace(id)}
            />
            {called(title)}
          </label>
        ))}
      </fieldset>
      <label class="tick">
        <input
          type="checkbox"
          checked={turned}
          onChange={({ currentTarget }) => setTurned(currentTarget.checked)}
        />
        {matWords().theOtherWayRoundItsMinusEnd}
      </label>
      {result && 'refused' in result && (
        <p role="status" class="sentence">
          {result.refused}
        </p>
      )}
      {result && 'left' in result && result.left.length > 0 && (
        <p class="sentence">
          {matWords().noPlaceInThisWiringSoTaped(leadNames(sheet.seen, result.left))}
        </p>
      )}
    </Screen>
  );
}

const circuitOf = (target: Target): Circuit | undefined =>
  'job' in target
    ? target.job.circuit
    : startingWirings.find(({ id }) => id === target.wiring)?.build();

async function openJobs(
  notebook: Pick<ReturnType<typeof usePorts>['notebook'], 'list' | 'read'>,
): Promise<readonly Job[]> {
  const summaries = await notebook.list();
  const open = summaries.filter(({ closedAt, damaged }) => !closedAt && !damaged).slice(0, 12);
  return Promise.all(open.map(({ id }) => notebook.read(id)));
}
