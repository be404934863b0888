import type { Change } from '../../flows/index.ts';
import type { Job } from '../../notebook/job.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { useGrowing } from '../growing.ts';
import type { Say } from '../hunt-actor.ts';
import { Expected } from '../pieces/expected.tsx';
import { Mark } from '../pieces/mark.tsx';
import { Screen } from '../pieces/screen.tsx';
import { Suspects } from '../pieces/suspects.tsx';
import { hrefOf } from '../route.ts';
import { held } from '../words.ts';

interface ChangedProps {
  readonly strip: preact.ComponentChildren;
  readonly job: Job;
  readonly change: Change;
  readonly say: Say;
}

const titles = {
  get fits() {
    return huntWords().asItShouldBe;
  },
  get off() {
    return huntWords().notAsItShouldBe;
  },
  get doubtful() {
    return huntWords().onTheEdge;
  },
} as const;

const shownFallen = 3;

/** What the newest reading did: measured beside expected, who fell away, who leads. */
export function Changed({ strip, job, change, say }: ChangedProps) {
  const { report, before, after } = change;
  // The figures first, and under them what follows from them.
  const whole = useGrowing(2) === 2;
  return (
    <Screen
      name="changed"
      title={report ? titles[report.fits] : huntWords().stored}
      strip={strip}
      acts={
        <>
          <button type="button" class="plain" onClick={() => say({ type: 'VOLUNTEER' })}>
            {huntWords().myOwnReading}
          </button>
          <button type="button" class="main" onClick={() => say({ type: 'ON' })}>
            {huntWords().goOn}
          </button>
        </>
      }
    >
      {report && (
        <>
          <dl class="compare">
            <div>
              <dt>{huntWords().youSaw}</dt>
              <dd class="figure">{held(report.measuredText)}</dd>
            </div>
            <div>
              <dt>{huntWords().healthy2}</dt>
              <dd class="figure">
                <Expected expected={report.expected} />
              </dd>
            </div>
          </dl>
          <p>
            <Mark fits={report.fits} />
          </p>
        </>
      )}
      <h2>
        {before === after
          ? huntWords().stillSuspects(after)
          : huntWords().fromToSuspects(before, after)}
      </h2>
      {whole && <Left job={job} change={change} />}
    </Screen>
  );
}

/** Who leads now, who fell away, and the way to see it on the wiring. */
function Left({ job, change: { leading, fellAway } }: Pick<ChangedProps, 'job' | 'change'>) {
  return (
    <>
      <Suspects suspects={leading} most={3} />
      {fellAway.length > 0 && (
        <>
          <h2>{huntWords().ruledOutByThis}</h2>
          <ul class="fallen">
            {fellAway.slice(0, shownFallen).map(({ repair, title }) => (
              <li key={repair}>{title}</li>
            ))}
          </ul>
          {fellAway.length > shownFallen && (
            <p class="soft">{huntWords().andWhatMore(fellAway.length - shownFallen)}</p>
          )}
        </>
      )}
      <p>
        <a href={hrefOf({ at: 'job', id: job.id, view: 'drawing' })}>
          {huntWords().seeItOnTheWiring}
        </a>
      </p>
    </>
  );
}
