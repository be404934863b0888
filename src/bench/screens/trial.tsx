import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Circuit, Setting } from '../../circuit/circuit.ts';
import { potsOf, restingSetting, switchesOf, withKnob } from '../../circuit/setting.ts';
import type { Job } from '../../notebook/job.ts';
import { called } from '../../words/called.ts';
import { tryingWords } from '../../words/en/trials.ts';
import { figure } from '../../words/figures.ts';
import { ChartKey, ResponseChart } from '../drawings/response-chart.tsx';
import type { Say } from '../hunt-actor.ts';
import { useOnce } from '../once.ts';
import { announce } from '../pieces/announce.tsx';
import { Screen } from '../pieces/screen.tsx';
import { go, hrefOf } from '../route.ts';
import { USUAL_CABLE, useChanges, useSettled, useTrial } from './trial-asked.ts';
import { blockedBy } from './trial-keep.ts';
import { ChangedReadings, TrialSummary, trialWords } from './trial-results.tsx';
import {
  asItIs,
  type Subject,
  subjectsOf,
  type Tried,
  type TriedFault,
  triedCircuit,
} from './trial-subject.ts';
import { TriedFields } from './tried-fields.tsx';

interface TrialProps {
  readonly strip: preact.ComponentChildren;
  readonly job: Job;
  readonly say: Say;
}

/** Another value or kind of a part: how it would sound beside the guitar as it is, and what the meter would read. */
export function TrialScreen({ strip, job, say }: TrialProps) {
  const { circuit } = job;
  const subjects = useMemo(() => subjectsOf(circuit), [circuit]);
  const [subject, setSubject] = useState<Subject>(() => subjects[0] as Subject);
  const [tried, setTried] = useState<Tried>(() => asItIs(circuit, subject));
  const [metres, setMetres] = useState(USUAL_CABLE);
  const [setting, setSetting] = useState<Setting>(() => ({
    ...restingSetting(circuit),
    plug: 'in',
  }));
  const [sweep, setSweep] = useState('');
  const [made, setMade] = useState<Circuit>(circuit);
  const [faults, setFaults] = useState<readonly TriedFault[]>([]);

  const choose = (key: string) => {
    const next = subjects.find((one) => one.key === key) as Subject;
    setSubject(next);
    setTried(asItIs(circuit, next));
    setMetres(USUAL_CABLE);
  };
  useEffect(() => {
    let here = true;
    triedCircuit(circuit, subject, tried).then((result) => {
      if (!here) return;
      setFaults('faults' in result ? result.faults : []);
      if ('circuit' in result) setMade(result.circuit);
    });
    return () => {
      here = false;
    };
  }, [circuit, subject, tried]);

  const { trial, failed } = useTrial(circuit, made, setting, sweep === '' ? null : sweep, metres);
  const swept = potsOf(made).find(({ id }) => id === sweep)?.title;
  const changes = useChanges(job, made);
  // A knob that is dragged asks for new curves and for nothing else: what it does not move is not made anew each frame.
  const blocked = useMemo(
    () => (made === circuit ? null : blockedBy(job, made)),
    [job, circuit, made],
  );
  const fields = useMemo(
    () => <TriedFields subject={subject} tried={tried} faults={faults} onTried={setTried} />,
    [subject, tried, faults],
  );
  const chart = useMemo(
    () =>
      trial && (
        <div class="chart-frame">
          <ResponseChart trial={trial} label={trialWords(trial)} />
          <ChartKey sweep={swept} />
        </div>
      ),
    [trial, swept],
  );
  const settled = useSettled(trial);
  const summary = useMemo(
    () => settled && <TrialSummary trial={settled} sweep={swept} />,
    [settled, swept],
  );
  const changed = useMemo(
    () =>
      made !== circuit &&
      changes && <ChangedReadings before={circuit} after={made} changes={changes} />,
    [circuit, made, changes],
  );
  const keep = useOnce(async () => {
    // Made of what stands in the fields now: what was made of it before may be of a value that was typed over.
    const result = await triedCircuit(circuit, subject, tried);
    if ('faults' in result) return setFaults(result.faults);
    const refusal = blockedBy(job, result.circuit);
    if (refusal !== null) return announce(refusal);
    say({ type: 'CORRECT', circuit: result.circuit, meter: job.meter });
    announce(tryingWords().thisIsTheIntendedWiringNow);
    go({ at: 'job', id: job.id, view: 'record' });
  });

  return (
    <Screen
      name="trial"
      title={tryingWords().tryAValue}
      strip={strip}
      acts={
        <>
          <a class="plain" href={hrefOf({ at: 'job', id: job.id, view: 'record' })}>
            {tryingWords().back}
          </a>
          <button
            type="button"
            class="main"
            disabled={made === circuit || faults.length > 0 || blocked !== null}
            onClick={keep}
          >
            {tryingWords().makeItTheIntendedWiring}
          </button>
        </>
      }
    >
      <label class="field-tall">
        <span>{tryingWords().whatToTry}</span>
        <select value={subject.key} onChange={({ currentTarget }) => choose(currentTarget.value)}>
          {subjects.map(({ key, title }) => (
            <option key={key} value={key}>
              {title}
            </option>
          ))}
        </select>
      </label>
      {fields}
      {subject.is === 'cable' && (
        <Slide
          title={tryingWords().metresOfCable}
          value={metres}
          most={20}
          step={0.5}
          onValue={setMetres}
        />
      )}
      {failed && <p role="alert">{failed}</p>}
      {chart ?? <p class="soft">{tryingWords().workingItOut}</p>}
      <Controls circuit={made} setting={setting} onSetting={setSetting} />
      <label class="field">
        <span>{tryingWords().showTheSweepOf}</span>
        <select value={sweep} onChange={({ currentTarget }) => setSweep(currentTarget.value)}>
          <option value="">{tryingWords().noKnob}</option>
          {potsOf(made).map(({ id, title }) => (
            <option key={id} value={id}>
              {called(title)}
            </option>
          ))}
        </select>
      </label>
      {summary}
      {blocked && <p class="sentence">{blocked}</p>}
      {changed}
      <p class="soft">{tryingWords().againstTheSignalOfOneCoil(figure(metres))}</p>
    </Screen>
  );
}

interface ControlsProps {
  readonly circuit: Circuit;
  readonly setting: Setting;
  onSetting(setting: Setting): void;
}

/** The controls as they stand for both curves. */
function Controls({ circuit, setting, onSetting }: ControlsProps) {
  return (
    <>
      {switchesOf(circuit).map((part) => (
        <label key={part.id} class="field">
          <span>{called(part.title)}</span>
          <select
            value={setting.positions[part.id]}
            onChange={({ currentTarget: { value } }) =>
              onSetting({ ...setting, positions: { ...setting.positions, [part.id]: value } })
            }
          >
            {part.positions.map(({ name, title }) => (
              <option key={name} value={name}>
                {called(title)}
              </option>
            ))}
          </select>
        </label>
      ))}
      {potsOf(circuit).map((part) => (
        <Slide
          key={part.id}
          title={called(part.title)}
          value={setting.knobs[part.id] ?? 10}
          most={10}
          step={0.5}
          onValue={(figure) => onSetting(withKnob(setting, part.id, figure))}
        />
      ))}
    </>
  );
}

interface SlideProps {
  readonly title: string;
  readonly value: number;
  readonly most: number;
  readonly step: number;
  onValue(value: number): void;
}

const Slide = ({ title, value, most, step, onValue }: SlideProps) => (
  <label class="knob-slide">
    <span>{title}</span>
    <input
      type="range"
      min="0"
      max={most}
      step={step}
      value={value}
      onInput={({ currentTarget }) => onValue(Number(currentTarget.value))}
    />
    <output>{value}</output>
  </label>
);
