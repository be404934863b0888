import type { Closing, ClosingItem } from '../../closing/closing.ts';
import type { Job } from '../../notebook/job.ts';
import { proofWords } from '../../words/en/proof.ts';
import type { ClosingSay } from '../closing-actor.ts';
import { ItemMark } from '../pieces/item-mark.tsx';
import { Screen } from '../pieces/screen.tsx';
import { capital, closingPlace, held, minutes, passWords } from '../words.ts';

interface ListProps {
  readonly job: Job;
  readonly closing: Closing;
  readonly strip: preact.ComponentChildren;
  readonly say: ClosingSay;
}

/** Readings that need the same tools stand together, in the order that moves least. */
const groups = () =>
  [
    {
      title: proofWords().meterOnOhms,
      of: ({ ask: { kind } }: ClosingItem) => kind === 'ohms' || kind === 'turn',
    },
    {
      title: proofWords().wiresMovedMeterOnOhms,
      of: ({ ask: { kind } }: ClosingItem) => kind === 'flex',
    },
    {
      title: proofWords().steelOnTheCoilsMeterOnDC,
      of: ({ ask: { kind } }: ClosingItem) => kind === 'tap',
    },
    {
      title: proofWords().pluggedInLowVolume,
      of: ({ ask: { kind } }: ClosingItem) => kind === 'listen' || kind === 'touch',
    },
  ] as const;

/** The whole list with its marks; any line can be done next. */
export function ClosingList({ job, closing, strip, say }: ListProps) {
  const begun = closing.items.some(({ taken }) => taken > 0);
  const failed = closing.state === 'failed';
  const { first } = closing;
  const parted = first.items < closing.items.length;
  return (
    <Screen
      name="closing-list"
      title={
        closing.state === 'passed'
          ? proofWords().allOfItPassed
          : proofWords().aboutMinutesToGo(minutes(closing.left))
      }
      strip={strip}
      acts={
        <>
          {closing.state === 'checking' && closing.first.passed && (
            <button type="button" class="plain" onClick={() => say({ type: 'ENOUGH' })}>
              {proofWords().stopHere}
            </button>
          )}
          <button type="button" class="main" onClick={() => say({ type: 'GO_ON' })}>
            {failed ? proofWords().whatIsOff : begun ? proofWords().goOn : proofWords().begin}
          </button>
        </>
      }
    >
      <p>
        {proofWords().noListNeedsFewer(closing.readings, closing.atLeast)}
        {closing.state === 'passed' ? '' : ` ${proofWords().stopWheneverYouLike}`}
      </p>
      {parted && (
        <p class="sentence">
          {proofWords().firstTheseShow(
            minutes(first.effort),
            first.readings,
            Math.floor(10 * first.share),
          )}
        </p>
      )}
      <Lines job={job} items={closing.items.slice(0, first.items)} say={say} />
      {parted && (
        <p class="sentence">{proofWords().thenTheRest(minutes(closing.effort - first.effort))}</p>
      )}
      <Lines job={job} items={closing.items.slice(first.items)} say={say} />
      <Unseen closing={closing} />
    </Screen>
  );
}

interface LinesProps {
  readonly job: Job;
  readonly items: readonly ClosingItem[];
  readonly say: ClosingSay;
}

const Lines = ({ job, items: all, say }: LinesProps) => (
  <>
    {groups().map(({ title, of }) => {
      const items = all.filter(of);
      return (
        items.length > 0 && (
          <section key={title}>
            <h2>{title}</h2>
            <ul class="check-list">
              {items.map((item) => (
                <li key={JSON.stringify(item.ask)}>
                  <button
                    type="button"
                    class="check-row"
                    onClick={() => say({ type: 'CHOOSE', item })}
                  >
                    <ItemMark mark={item.mark} large />
                    <span class="check-place">{capital(closingPlace(job.circuit, item.ask))}</span>
                    <span class="note">
                      {held(passWords(item))}
                      {item.times > 1
                        ? proofWords().timesTaken(Math.min(item.taken, item.times), item.times)
                        : ''}
                      {item.answers.length > 0 && (
                        <>
                          {' · '}
                          <strong>{held(item.answers.at(-1) ?? '')}</strong>
                        </>
                      )}
                    </span>
                  </button>
                </li>
              ))}
            </ul>
          </section>
        )
      );
    })}
  </>
);

/** What this list cannot see, known before the first reading. */
function Unseen({ closing: { cannotSee } }: { closing: Closing }) {
  if (cannotSee.length === 0) return null;
  return (
    <details>
      <summary>{proofWords().whatThisCannotSee}</summary>
      <ul class="unseen-list">
        {cannotSee.map(({ title, places }) => (
          <li key={title}>
            <strong>{title}</strong>
            {proofWords().inPlaces(places.length)}
          </li>
        ))}
      </ul>
    </details>
  );
}
