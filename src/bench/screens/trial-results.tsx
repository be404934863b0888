import { useState } from 'preact/hooks';
import type { Circuit } from '../../circuit/circuit.ts';
import type { ReadingChange } from '../../diagnosis/reading-changes.ts';
import type { Curve, Trial } from '../../diagnosis/trial.ts';
import type { Ask } from '../../readings/reading.ts';
import { tryingWords } from '../../words/en/trials.ts';
import { fixed } from '../../words/figures.ts';
import { held, placeWords, settingWords } from '../words.ts';

const hertzWords = (hertz: number): string =>
  hertz >= 1000 ? `${fixed(hertz / 1000, 1)}\u00a0kHz` : `${Math.round(hertz / 10) * 10}\u00a0Hz`;
const decibelWords = (decibels: number): string => {
  if (decibels < -60) return tryingWords().silent;
  const rounded = Math.abs(decibels) < 0.05 ? 0 : decibels;
  return `${rounded > 0 ? '+' : rounded < 0 ? '−' : ''}${fixed(Math.abs(rounded), 1)}\u00a0dB`;
};
const resonanceWords = ({ resonance }: Curve): string =>
  resonance
    ? `${hertzWords(resonance.hertz)}, ${decibelWords(resonance.decibels)}`
    : tryingWords().none;

/** Where treble is compared. */
const TREBLE = 4000;
const trebleOf = ({ hertz }: Trial, { decibels }: Curve): string =>
  decibelWords(decibels[hertz.findIndex((one) => one >= TREBLE)] as number);

/** What the chart shows, in one sentence or two. */
export function trialWords(trial: Trial): string {
  const one = (curve: Curve) =>
    tryingWords().lowEndDecibelResonanceResonance(
      decibelWords(curve.level),
      resonanceWords(curve),
      trebleOf(trial, curve),
    );
  return tryingWords().responseAsItIsOneTriedOne2(one(trial.before), one(trial.after));
}

/** The chart in figures: the key to its lines, and a table that a screen reader can walk. */
export function TrialSummary({ trial, sweep }: { trial: Trial; sweep: string | undefined }) {
  const rows = [
    [tryingWords().lowEnd, (curve: Curve) => decibelWords(curve.level)],
    [tryingWords().resonance, resonanceWords],
    [tryingWords().at4KHz, (curve: Curve) => trebleOf(trial, curve)],
  ] as const;
  return (
    <>
      <table class="grounds">
        <thead>
          <tr>
            <td />
            <th scope="col">{tryingWords().asItIs}</th>
            <th scope="col">{tryingWords().tried}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([title, words]) => (
            <tr key={title}>
              <th scope="row">{title}</th>
              <td>{words(trial.before)}</td>
              <td>{words(trial.after)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {sweep !== undefined && trial.family.length > 0 && <Sweep trial={trial} sweep={sweep} />}
    </>
  );
}

/** A line for each curve of the sweep. Its rows are written only while they are unfolded. */
function Sweep({ trial, sweep }: { trial: Trial; sweep: string }) {
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        <span>{tryingWords().theSweepFrom0To10In(sweep)}</span>
      </summary>
      {open && (
        <table class="grounds">
          <thead>
            <tr>
              <th scope="col">{tryingWords().knobAt}</th>
              <th scope="col">{tryingWords().lowEnd}</th>
              <th scope="col">{tryingWords().resonance}</th>
              <th scope="col">{tryingWords().at4KHz}</th>
            </tr>
          </thead>
          <tbody>
            {trial.family.map(({ knob, curve }) => (
              <tr key={knob}>
                <th scope="row">{knob}</th>
                <td>{decibelWords(curve.level)}</td>
                <td>{resonanceWords(curve)}</td>
                <td>{trebleOf(trial, curve)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </details>
  );
}

interface ChangedReadingsProps {
  readonly before: Circuit;
  readonly after: Circuit;
  readonly changes: readonly ReadingChange[];
}

/** A part read by itself, by its name; null for a reading in the circuit. */
function aloneWords(circuit: Circuit, { setting }: Ask): string | null {
  const [joint] = setting.lifted;
  const lead = circuit.leads.find(({ id }) => joint?.startsWith(`${id}@`));
  const part = circuit.parts.find(({ id }) => lead?.from.startsWith(`${id}.`));
  return part ? tryingWords().thePartAlone(part.title) : null;
}

/** More rows than this are folded away. */
const SHOWN = 8;

/** What a meter will read that it does not read now. */
export function ChangedReadings({ before, after, changes }: ChangedReadingsProps) {
  if (changes.length === 0) return <p>{tryingWords().theMeterReadsTheSameAsBefore}</p>;
  const rows = changes.map(({ ask, named, before: was, after: is }) => {
    const circuit = named === 'after' ? after : before;
    const alone = aloneWords(circuit, ask);
    const place = alone ?? placeWords(circuit, ask);
    const how = alone ? tryingWords().oneLegLifted : settingWords(circuit, ask);
    return (
      <tr key={`${place} ${how}`}>
        <th scope="row">
          {place}
          <span class="band">{how}</span>
        </th>
        <td>{was ? held(was.text) : tryingWords().notThere}</td>
        <td>{is ? held(is.text) : tryingWords().notThere}</td>
      </tr>
    );
  });
  const table = (some: typeof rows) => (
    <table class="grounds">
      <thead>
        <tr>
          <th scope="col">{tryingWords().reading}</th>
          <th scope="col">{tryingWords().now}</th>
          <th scope="col">{tryingWords().after}</th>
        </tr>
      </thead>
      <tbody>{some}</tbody>
    </table>
  );
  return (
    <>
      <h2>{tryingWords().whatTheMeterWillRead}</h2>
      {table(rows.slice(0, SHOWN))}
      {rows.length > SHOWN && (
        <details>
          <summary>{tryingWords().andWhatMore(rows.length - SHOWN)}</summary>
          {table(rows.slice(SHOWN))}
        </details>
      )}
    </>
  );
}
