import { useState } from 'preact/hooks';
import type { Circuit } from '../../circuit/circuit.ts';
import type { ReadingChange } from '../../diagnosis/reading-changes.ts';
import type { Curve, Trial } from '../../diagnosis/trial.ts';
import type { Ask } from '../../readings/reading.ts';
import { tryingWords } from '../../words/en/trials.ts';
import { fixed } from '../../words/figures.ts';
import { Table } from '../pieces/table.tsx';
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
      <Table
        columns={['', tryingWords().asItIs, tryingWords().tried]}
        rows={rows.map(([title, words]) => ({
          key: title,
          head: title,
          cells: [words(trial.before), words(trial.after)],
        }))}
      />
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
        <Table
          columns={[
            tryingWords().knobAt,
            tryingWords().lowEnd,
            tryingWords().resonance,
            tryingWords().at4KHz,
          ]}
          rows={trial.family.map(({ knob, curve }) => ({
            key: String(knob),
            head: knob,
            cells: [decibelWords(curve.level), resonanceWords(curve), trebleOf(trial, curve)],
          }))}
        />
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
    return {
      key: `${place} ${how}`,
      head: (
        <>
          {place}
          <span class="band">{how}</span>
        </>
      ),
      cells: [was, is].map((text) => (text ? held(text.text) : tryingWords().notThere)),
    };
  });
  const table = (some: typeof rows) => (
    <Table columns={[tryingWords().reading, tryingWords().now, tryingWords().after]} rows={some} />
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
