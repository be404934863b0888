import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Circuit, Setting } from '../../circuit/circuit.ts';
import type { SiteId } from '../../circuit/edit.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import { askKey } from '../../diagnosis/ask-key.ts';
import type { Expectation, ReadingReport } from '../../diagnosis/assessment.ts';
import { asksAtJoint, type JointAsks } from '../../flows/index.ts';
import type { Job } from '../../notebook/job.ts';
import type { Ask } from '../../readings/reading.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { ControlsStrip } from '../drawings/index.ts';
import { choicesFor } from '../entry/choices.tsx';
import { ControlsFields } from '../entry/controls-fields.tsx';
import type { Say } from '../hunt-actor.ts';
import { lieOf } from '../lie.ts';
import { announce } from '../pieces/announce.tsx';
import { Expected } from '../pieces/expected.tsx';
import { Mark } from '../pieces/mark.tsx';
import { Panel } from '../pieces/panel.tsx';
import { usePorts } from '../ports.ts';
import { capital, held, percent, pointWords, siteWords } from '../words.ts';

interface PlacePanelProps {
  readonly job: Job;
  readonly site: SiteId | PartId;
  /** Share of suspicion, 0..1. */
  readonly share: number;
  /** Readings of the job, newest last. */
  readonly reports: readonly ReadingReport[];
  readonly setting: Setting;
  readonly storing: boolean;
  readonly say: Say;
  onSetting(setting: Setting): void;
  onTake(ask: Ask): void;
  onClose(): void;
}

/** One place of the drawing: what it should read, what is seen there, and how much it is suspected. */
export function PlacePanel(props: PlacePanelProps) {
  const { job, site, share, reports, setting, storing, say, onSetting, onTake, onClose } = props;
  const { circuit } = job;
  const asks = useMemo(() => asksAtJoint(circuit, site, setting), [circuit, site, setting]);
  const closed = job.closedAt !== undefined;
  return (
    <Panel title={capital(siteWords(circuit, site))} onClose={onClose}>
      {share >= 0.01 && <p>{huntWords().shareOfTheSuspicionShare(percent(share))}</p>}
      {asks.ohms.length > 0 && (
        <Readings
          job={job}
          asks={asks.ohms}
          reports={reports}
          closed={closed || storing}
          onTake={onTake}
        />
      )}
      {asks.ohms.length === 0 && asks.look === null && (
        <p class="soft">{huntWords().itLiesInsideAPartNoProbe}</p>
      )}
      {asks.ohms.length > 0 && (
        <>
          <ControlsStrip
            circuit={circuit}
            setting={setting}
            previous={null}
            leftHanded={lieOf(circuit).leftHanded}
          />
          <details>
            <summary>{huntWords().controlsStandOtherwise}</summary>
            <ControlsFields
              circuit={circuit}
              setting={setting}
              onSetting={onSetting}
              lifting={false}
            />
          </details>
        </>
      )}
      {asks.look && <Look job={job} ask={asks.look} storing={storing} say={say} />}
      {closed && <p class="soft">{huntWords().thisJobIsClosedTakeItUp}</p>}
    </Panel>
  );
}

interface ReadingsProps {
  readonly job: Job;
  readonly asks: JointAsks['ohms'];
  readonly reports: readonly ReadingReport[];
  readonly closed: boolean;
  onTake(ask: Ask): void;
}

/** What the meter shows of a healthy guitar from here; each line can be read and entered. */
function Readings({ job, asks, reports, closed, onTake }: ReadingsProps) {
  const { circuit } = job;
  const expected = useExpectations(job, asks);
  const red = asks[0]?.ask.red;
  return (
    <section aria-label={huntWords().whatItShouldRead} class="readings-here">
      {red && (
        <p class="soft">
          <span class="probe probe-red">R</span> {huntWords().onPoint(pointWords(circuit, red))}
        </p>
      )}
      <ul>
        {asks.map(({ to, ask }) => {
          const found = expected.get(askKey(ask));
          const read = reports.findLast(
            (report) => !report.stale && askKey(report.ask) === askKey(ask),
          );
          return (
            <li key={to}>
              <button type="button" disabled={closed} onClick={() => onTake(ask)}>
                <span class="note">{blackWords(circuit, to, ask.black)}</span>
                <span class="says">
                  {found === undefined ? (
                    huntWords().workingItOut
                  ) : typeof found === 'string' ? (
                    found
                  ) : (
                    <Expected expected={found} />
                  )}
                </span>
                {read && (
                  <span class="card-read">
                    {huntWords().youReadMeasuredText(held(read.measuredText))}{' '}
                    <Mark fits={read.fits} />
                  </span>
                )}
                <span class="take">{read ? huntWords().readItAgain : huntWords().readIt}</span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function blackWords(circuit: Circuit, to: JointAsks['ohms'][number]['to'], black: string): string {
  switch (to) {
    case 'across':
      return huntWords().bOnPointThroughTheJoint(pointWords(circuit, black));
    case 'sleeve':
      return huntWords().bOnTheJacksSleeve;
    case 'tip':
      return huntWords().bOnTheJacksTip;
  }
}

/** Expectations by ask; a sentence where the engine failed. */
function useExpectations(
  { circuit, meter }: Job,
  asks: JointAsks['ohms'],
): ReadonlyMap<string, Expectation | string> {
  const { engine } = usePorts();
  const [found, setFound] = useState<ReadonlyMap<string, Expectation | string>>(new Map());
  useEffect(() => {
    let wanted = true;
    const keep = (ask: Ask, what: Expectation | string) => {
      if (wanted) setFound((before) => new Map(before).set(askKey(ask), what));
    };
    for (const { ask } of asks)
      engine.expect({ circuit, meter, ask }).then(
        (expectation) => keep(ask, expectation),
        (error: unknown) =>
          keep(ask, error instanceof Error ? error.message : huntWords().itCouldNotBeWorkedOut),
      );
    return () => {
      wanted = false;
    };
  }, [engine, circuit, meter, asks]);
  return found;
}

interface LookProps {
  readonly job: Job;
  readonly ask: NonNullable<JointAsks['look']>;
  readonly storing: boolean;
  readonly say: Say;
}

/** What the joint looks like, in one touch. */
function Look({ job, ask, storing, say }: LookProps) {
  const last = job.readings.findLast(
    (reading) =>
      reading.round === job.repairs.length &&
      reading.ask.kind === 'look' &&
      reading.ask.at === ask.at,
  );
  const seen = last?.seen.kind === 'look' ? last.seen.how : null;
  return (
    <fieldset class="looks">
      <legend>{huntWords().whatDoYouSeeThere}</legend>
      <div class="chips">
        {choicesFor('look').map(({ says, note, seen: choice }) => {
          const chosen = choice.kind === 'look' && choice.how === seen;
          return (
            <button
              key={says}
              type="button"
              class="chip"
              aria-pressed={chosen}
              disabled={storing || job.closedAt !== undefined}
              onClick={() => {
                // Said twice it is still one look.
                if (chosen) return;
                say({ type: 'SAW', answers: [{ ask, seen: choice }] });
                announce(huntWords().keptSays(says));
              }}
            >
              <span class="says">{says}</span>
              <span class="note">{note}</span>
            </button>
          );
        })}
      </div>
    </fieldset>
  );
}
