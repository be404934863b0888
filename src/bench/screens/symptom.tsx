import { useEffect, useRef, useState } from 'preact/hooks';
import type { Circuit } from '../../circuit/circuit.ts';
import { sameAsk } from '../../flows/acts.ts';
import { type Answer, humPlaces } from '../../flows/index.ts';
import type { Job } from '../../notebook/job.ts';
import { ask, seen } from '../../notebook/job-shape.ts';
import { list, object } from '../../notebook/shape.ts';
import type { AskOf } from '../../readings/reading.ts';
import { humWords } from '../../words/en/hum.ts';
import { huntWords } from '../../words/en/hunt.ts';
import type { SeenChoice } from '../entry/choices.tsx';
import { useGrowing } from '../growing.ts';
import type { Say } from '../hunt-actor.ts';
import { announce } from '../pieces/announce.tsx';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { readPractice } from '../practice/read.ts';
import { useHalfTold } from '../use-half-told.ts';
import { HumScreen } from './hum.tsx';
import { type Group, groupsFor, type Telling } from './symptom-groups.ts';

interface SymptomProps {
  /** Of the job: what is told half is kept with it. */
  readonly id: string;
  readonly strip: preact.ComponentChildren;
  readonly circuit: Circuit;
  readonly say: Say;
  /** A made-up guitar is played by the app. */
  readonly practice?: NonNullable<Job['practice']>;
}

/** What was told of one job and is not in it yet. */
interface Told {
  readonly heard: readonly Answer[];
  readonly hums: readonly Answer[];
}
const answers = list(object({ ask, seen }), 200);
const toldShape = object({ heard: answers, hums: answers });
export const heardPlace = (job: string): string => `heard/${job}`;

/** What is heard, before any meter comes out. Nothing has to be answered; what is left alone counts as not tried. */
export function Symptom({ id, strip, circuit, say, practice }: SymptomProps) {
  const { engine } = usePorts();
  const [makers] = useState(() => groupsFor(circuit));
  // The first row comes first, then the rest of its group.
  const wholeGroup = useGrowing(2) === 2;
  // The first group is answered first; each other is made in a task of its own, and shown in one after that.
  const [made, setMade] = useState<readonly Group[]>(() =>
    makers.slice(0, 1).map((make) => make()),
  );
  useEffect(() => {
    const make = makers[made.length];
    if (!make || !wholeGroup) return;
    // They may all have been made meanwhile.
    const timer = setTimeout(() => setMade((now) => (now === made ? [...made, make()] : now)), 0);
    return () => clearTimeout(timer);
  }, [made, makers, wholeGroup]);
  const groups = made.filter((group) => group.tellings.length > 0);
  const tellings = groups.flatMap((group) => group.tellings);
  const half = useHalfTold<Told>(heardPlace(id), () => ({ heard: [], hums: [] }), toldShape);
  const chosen = chosenOf(tellings, half.told.heard);
  const [open, setOpen] = useState(() => tellings.find((one) => !chosen.has(one)) ?? null);

  const [measuring, setMeasuring] = useState(false);
  // The wiring may have another selector than when they were measured.
  const hums = half.told.hums.filter(({ ask }) => ask.kind === 'hum' && isOf(circuit, ask));

  const choose = (telling: Telling, choice: SeenChoice | null) => {
    const own = choice ? [{ ask: telling.ask, seen: choice.seen }] : [];
    half.tell((now) => {
      const others = now.heard.filter((one) => !sameAsk(one.ask, telling.ask));
      return { ...now, heard: [...others, ...own] };
    });
    const { tellings: here } = groups.find((group) => group.tellings.includes(telling)) as Group;
    setOpen(here[here.indexOf(telling) + 1] ?? null);
  };
  const play = async (of: NonNullable<Job['practice']>) => {
    // All that can be heard, also what is not shown yet.
    const whole = makers.map((make, at) => made[at] ?? make());
    setMade(whole);
    const heard: Answer[] = [];
    for (const telling of whole.flatMap((group) => group.tellings)) {
      const { seen } = await readPractice(engine, of, { readings: [], repairs: [] }, telling.ask);
      heard.push({ ask: telling.ask, seen });
    }
    half.tell((now) => ({ ...now, heard }));
    setOpen(null);
    announce(huntWords().whatIsHeardIsFilledIn);
  };
  const told = [
    ...tellings.flatMap((telling): Answer[] => {
      const choice = chosen.get(telling);
      return choice ? [{ ask: telling.ask, seen: choice.seen }] : [];
    }),
    ...hums,
  ];
  if (measuring)
    return (
      <HumScreen
        strip={strip}
        circuit={circuit}
        onBack={() => setMeasuring(false)}
        onAnswers={(heard) => {
          half.tell((now) => ({ ...now, hums: heard }));
          setMeasuring(false);
        }}
      />
    );

  return (
    <Screen
      name="symptom"
      title={huntWords().whatDoYouHear}
      strip={strip}
      acts={
        <>
          {told.length === 0 && (
            <button type="button" class="plain" onClick={() => say({ type: 'SKIP' })}>
              {huntWords().notTriedYet}
            </button>
          )}
          <button
            type="button"
            class="main"
            disabled={told.length === 0}
            onClick={() => say({ type: 'HEARD', answers: told })}
          >
            {huntWords().goOn}
          </button>
        </>
      }
    >
      <p class="soft">
        {practice ? huntWords().aMadeUpGuitarSomethingInIt : huntWords().pluggedInAtLowVolumeAnswer}
      </p>
      {practice && (
        <button type="button" class="large" onClick={() => void play(practice)}>
          {huntWords().plugItInAndPlay}
        </button>
      )}
      {groups.map((group, index) => (
        <GroupRows
          key={group.title}
          group={group}
          unfolded={index === 0}
          rows={wholeGroup ? group.tellings : group.tellings.slice(0, 1)}
          chosen={chosen}
          open={open}
          onOpen={setOpen}
          onChoose={choose}
        />
      ))}
      {!practice && (
        <p class="row">
          <button type="button" class="plain" onClick={() => setMeasuring(true)}>
            {humWords().measureTheHum}
          </button>
          {hums.length > 0 && <span class="place-seen">{humWords().takenOver(hums.length)}</span>}
        </p>
      )}
    </Screen>
  );
}

const chosenOf = (
  tellings: readonly Telling[],
  heard: readonly Answer[],
): ReadonlyMap<Telling, SeenChoice> => {
  const told = new Map(heard.map((one) => [JSON.stringify(one.ask), JSON.stringify(one.seen)]));
  return new Map(
    tellings.flatMap((telling) => {
      const saw = told.get(JSON.stringify(telling.ask));
      const choice = telling.choices.find(({ seen }) => JSON.stringify(seen) === saw);
      return choice ? [[telling, choice] as const] : [];
    }),
  );
};

/** Whether hum can be measured so on this wiring. */
const isOf = (circuit: Circuit, { setting, against }: AskOf<'hum'>): boolean =>
  [setting, against].every((one) =>
    humPlaces(circuit).some((place) => JSON.stringify(place.setting) === JSON.stringify(one)),
  );

interface GroupRowsProps {
  readonly group: Group;
  readonly unfolded: boolean;
  /** Those of the group that are shown so far. */
  readonly rows: readonly Telling[];
  readonly chosen: ReadonlyMap<Telling, SeenChoice>;
  readonly open: Telling | null;
  onOpen(telling: Telling | null): void;
  onChoose(telling: Telling, choice: SeenChoice | null): void;
}

/** A heading that folds its rows away, so that what matters most fits on the screen; it tells how many are answered. */
function GroupRows({ group, unfolded, rows, chosen, open, onOpen, onChoose }: GroupRowsProps) {
  const [shown, setShown] = useState(unfolded);
  const told = group.tellings.filter((telling) => chosen.has(telling)).length;
  const fold = () => {
    setShown(!shown);
    onOpen(shown ? null : (group.tellings.find((telling) => !chosen.has(telling)) ?? null));
  };
  return (
    <section class="places">
      <h2>
        <button type="button" class="places-head" aria-expanded={shown} onClick={fold}>
          <span>{group.title}</span>
          <span class={told > 0 ? 'place-seen' : 'soft'}>
            {huntWords().toldOfCount(told, group.tellings.length)}
          </span>
        </button>
      </h2>
      {shown && <p class="soft">{group.how}</p>}
      {shown &&
        rows.map((telling) => (
          <Place
            key={telling.title}
            telling={telling}
            choice={chosen.get(telling) ?? null}
            open={open === telling}
            onOpen={() => onOpen(open === telling ? null : telling)}
            onChoose={(choice) => onChoose(telling, choice)}
          />
        ))}
    </section>
  );
}

interface PlaceProps {
  readonly telling: Telling;
  readonly choice: SeenChoice | null;
  readonly open: boolean;
  onOpen(): void;
  onChoose(choice: SeenChoice | null): void;
}

function Place({ telling, choice, open, onOpen, onChoose }: PlaceProps) {
  const row = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The next question comes into view by itself, answers and all.
    if (open) row.current?.scrollIntoView({ block: 'nearest' });
  }, [open]);
  return (
    <div class="place" ref={row}>
      <button type="button" class="place-head" aria-expanded={open} onClick={onOpen}>
        <span class="place-title">
          {telling.title}
          {telling.at && <span class="note">{telling.at}</span>}
        </span>
        <span class={choice ? 'place-seen' : 'soft'}>
          {choice ? choice.says.toLowerCase() : huntWords().notTried}
        </span>
      </button>
      {open && (
        <div class="chips">
          {telling.choices.map((one) => (
            <button
              key={one.says}
              type="button"
              class="chip"
              aria-pressed={choice === one}
              onClick={() => onChoose(one)}
            >
              <span class="says">{one.says}</span>
              {one.note && <span class="note">{one.note}</span>}
            </button>
          ))}
          <button type="button" class="chip" onClick={() => onChoose(null)}>
            <span class="says">{huntWords().notTried2}</span>
          </button>
        </div>
      )}
    </div>
  );
}
