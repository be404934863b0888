import { useEffect, useState } from 'preact/hooks';
import { startingWirings } from '../../circuit/catalog/index.ts';
import type { Circuit } from '../../circuit/circuit.ts';
import type { TogetherSheet } from '../../notebook/index.ts';
import type { PlayedPosition } from '../../sorter/positions.ts';
import { type Heard, type Turn, turnedBy } from '../../sorter/together.ts';
import { called } from '../../words/called.ts';
import { togetherWords } from '../../words/en/together.ts';
import { Table } from '../pieces/table.tsx';
import { usePorts } from '../ports.ts';
import { capital } from '../words.ts';
import { humWords } from './together-words.ts';

interface TogetherPositionsProps {
  readonly sheet: TogetherSheet;
  readonly heard: readonly Heard[];
  /** What is turned before it is played so. */
  readonly mend: Readonly<Record<string, Turn>>;
  onMeant(meant: NonNullable<TogetherSheet['meant']>): void;
}

/** Every position of the wiring that they are meant for: in phase or not, and whether hum cancels. */
export function TogetherPositions({ sheet, heard, mend, onMeant }: TogetherPositionsProps) {
  const { engine, notebook } = usePorts();
  const { meant } = sheet;
  const [own, setOwn] = useState<readonly Circuit[]>([]);
  const [positions, setPositions] = useState<readonly PlayedPosition[]>([]);
  const [failure, setFailure] = useState<string | null>(null);
  useEffect(() => {
    notebook.list().then(
      async (jobs) => {
        const open = jobs.filter(({ damaged }) => !damaged).slice(0, 8);
        const found = await Promise.all(open.map(({ id }) => notebook.read(id)));
        setOwn(found.map(({ circuit, title }) => ({ ...circuit, title })));
      },
      () => {
        // The starting wirings can be chosen all the same.
      },
    );
  }, [notebook]);
  const turned = heard.map((one) => turnedBy(one, mend[one.id] ?? 'none'));
  const question = meant ? JSON.stringify([meant, turned]) : null;
  useEffect(() => {
    if (!meant) return;
    engine.positions({ ...meant, heard: turned }).then(
      (list) => {
        setPositions(list);
        setFailure(null);
      },
      (error: unknown) =>
        setFailure(error instanceof Error ? error.message : togetherWords().noReasonGiven),
    );
  }, [question, engine]);
  const wirings = [...own, ...startingWirings.map(({ build }) => build())].filter(
    ({ pickups }) => pickups.length >= 2 || (pickups[0]?.coils.length ?? 0) >= 2,
  );
  const fitting = wirings.filter(({ pickups }) => pickups.length >= sheet.pickups.length);
  const choose = (circuit: Circuit | undefined) => {
    if (circuit) onMeant({ circuit, places: firstPlaces(circuit, sheet) });
  };
  return (
    <>
      <h2>{togetherWords().inEveryPosition}</h2>
      <label class="field-tall">
        <span>{togetherWords().theWiringThatTheyAreMeant}</span>
        <select
          value={meant?.circuit.title ?? ''}
          onChange={({ currentTarget }) =>
            choose(fitting.find(({ title }) => title === currentTarget.value))
          }
        >
          <option value="">{togetherWords().chooseOne}</option>
          {fitting.map(({ id, title }, at) => (
            <option key={`${id} ${at}`} value={title}>
              {called(title)}
            </option>
          ))}
        </select>
      </label>
      {meant &&
        sheet.pickups.map(({ id, title }) => (
          <label key={id} class="field">
            <span>{togetherWords().titleIsIts(capital(title))}</span>
            <select
              value={meant.places[id] ?? ''}
              onChange={({ currentTarget }) =>
                onMeant({ ...meant, places: { ...meant.places, [id]: currentTarget.value } })
              }
            >
              {meant.circuit.pickups.map((place) => (
                <option key={place.id} value={place.id}>
                  {called(place.title)}
                </option>
              ))}
            </select>
          </label>
        ))}
      {failure && (
        <p role="alert" class="sentence">
          {failure}
        </p>
      )}
      {meant && positions.length > 0 && (
        <Table
          title={
            Object.values(mend).some((turn) => turn !== 'none')
              ? togetherWords().afterThat
              : togetherWords().asTheyAre
          }
          rows={positions.map(({ title, fights, hum }) => ({
            key: title,
            head: title,
            cells: [fights ? togetherWords().fight : togetherWords().inPhase, humWords(hum)],
            data: { 'data-fights': fights, 'data-position': title },
          }))}
        />
      )}
      {meant && positions.length === 0 && !failure && (
        <p class="soft">{togetherWords().noPositionOfThisWiringPlays}</p>
      )}
    </>
  );
}

/** Each pickup where its name says, else in the order of the wiring. */
function firstPlaces(
  circuit: Circuit,
  { pickups }: TogetherSheet,
): Readonly<Record<string, string>> {
  const free = [...circuit.pickups];
  const take = (which: (title: string) => boolean): string | undefined => {
    const at = free.findIndex(({ title }) => which(title));
    return at < 0 ? undefined : free.splice(at, 1)[0]?.id;
  };
  const named = pickups.map(
    ({ title }) =>
      ['bridge', 'middle', 'neck'].flatMap((word) =>
        title.toLowerCase().includes(word) ? [take((other) => other.includes(word))] : [],
      )[0],
  );
  return Object.fromEntries(
    pickups.map(({ id }, at) => [
      id,
      named[at] ?? take(() => true) ?? circuit.pickups[0]?.id ?? '',
    ]),
  );
}
