import type { ComponentChildren } from 'preact';
import type { Circuit } from '../../circuit/circuit.ts';
import type { Assessment, Verdict as Found, ReadingReport } from '../../diagnosis/assessment.ts';
import { checkUnderWay, type Work } from '../../flows/index.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { PlacesDrawing, placesInSteps, shownPlaces } from '../drawings/index.ts';
import { useGrowing } from '../growing.ts';
import type { Say } from '../hunt-actor.ts';
import { lieOf } from '../lie.ts';
import { useAside } from '../pieces/after-paint.ts';
import { Screen } from '../pieces/screen.tsx';
import { Steps } from '../pieces/steps.tsx';
import { Suspects } from '../pieces/suspects.tsx';
import { percent, sureness } from '../words.ts';
import { Grounds } from './grounds.tsx';

interface VerdictProps {
  readonly strip: preact.ComponentChildren;
  readonly work: Work;
  /** Address of the wiring with its suspects. */
  readonly map: string;
  /** Address of the closing check. */
  readonly closing: string;
  readonly assessment: Assessment;
  readonly verdict: Found;
  /** What a practice guitar has to say at its end; there is none to be closed. */
  readonly practice?: ComponentChildren;
  readonly say: Say;
}

/** Above this many characters a list says it better than a heading. */
const longest = 160;

/** The place in one sentence, how sure, where it is, and on what grounds. */
export function Verdict(props: VerdictProps) {
  const { strip, work, map, closing, assessment, verdict, practice, say } = props;
  const places = placesOf(assessment, verdict);
  const several = verdict.kind === 'cannot-tell-apart';
  const unseen = verdict.kind === 'not-ruled-out';
  const mendable = verdict.repairs.length > 0;
  // A repair was made, and nothing read since is off.
  const isMended = unseen && work.repairs.length > 0;
  // What was found comes first, then where it is, then why, table by table.
  const pieces = useGrowing(2 + WHY);
  const canOpen = work.access === 'closed' && verdict.kind !== 'healthy';
  return (
    <Screen
      name="verdict"
      title={
        several && verdict.sentence.length > longest
          ? huntWords().noReadingLeftTellsTheseApart
          : unseen
            ? huntWords().nothingReadSoFarIsOffBut
            : verdict.sentence
      }
      strip={strip}
      acts={
        <>
          <button type="button" class="plain" onClick={() => say({ type: 'VOLUNTEER' })}>
            {huntWords().myOwnReading}
          </button>
          {mendable && (
            <button type="button" class="main" onClick={() => say({ type: 'TO_REPAIR' })}>
              {huntWords().howToMendIt}
            </button>
          )}
          {!mendable && (
            <button type="button" class="main" onClick={() => say({ type: 'CLOSE' })}>
              {verdict.kind === 'healthy' || isMended
                ? huntWords().closeTheJob
                : huntWords().leaveItHere}
            </button>
          )}
        </>
      }
    >
      <p class="sure">
        {several
          ? huntWords().oneOfThese
          : unseen
            ? huntWords().asIntended
            : sureness(verdict.probability)}
        : <strong>{percent(verdict.probability)}</strong>
      </p>
      {practice}
      {(several || unseen) && (
        <Suspects suspects={verdict.options.map((one) => ({ ...one, faults: [] }))} most={5} />
      )}
      {canOpen && (
        <button type="button" class="large" onClick={() => say({ type: 'OPENED' })}>
          <span class="says">{huntWords().theGuitarIsOpenNow}</span>
          <span class="note">
            {several
              ? huntWords().readingsInsideCanTellThem
              : huntWords().readingsInsideCanMakeSure}
          </span>
        </button>
      )}
      {!mendable && !practice && verdict.kind !== 'outside' && (
        <a class="door" href={closing}>
          <span class="says">
            {checkUnderWay(work)
              ? huntWords().goOnWithTheClosingCheck
              : huntWords().proveItTheClosingCheck}
          </span>
          <span class="note">{huntWords().whatWasReadAlreadyCounts}</span>
        </a>
      )}
      {pieces > 1 && places.length > 0 && (
        <div class="place-drawing">
          <LatePlaces circuit={work.circuit} sites={places} />
        </div>
      )}
      {pieces > 1 && (
        <a class="alone" href={map}>
          {huntWords().seeItOnTheWiring}
        </a>
      )}
      {pieces > 2 && <Why {...props} pieces={pieces - 2} />}
    </Screen>
  );
}

/** Where it is, worked out after what stands above was painted; its room is there before. */
function LatePlaces({ circuit, sites }: { circuit: Circuit; sites: readonly string[] }) {
  const { turned, leftHanded } = lieOf(circuit);
  const shown = shownPlaces(sites);
  const rows = useAside(JSON.stringify(shown), `${turned} ${leftHanded}`, () =>
    placesInSteps(circuit, shown, { turned, leftHanded }),
  );
  return rows ? <PlacesDrawing circuit={circuit} sites={shown} rows={rows} /> : null;
}

/** Pieces of why. */
const WHY = 3;

/** What else is to be said of a verdict, and the readings that it stands on, as many pieces of it as are shown so far. */
function Why({ work, assessment, verdict, pieces }: VerdictProps & { readonly pieces: number }) {
  const several = verdict.kind === 'cannot-tell-apart';
  return (
    <>
      {several && verdict.split && <p>{verdict.split}</p>}
      {verdict.kind === 'outside' && <Outside assessment={assessment} verdict={verdict} />}
      {verdict.kind === 'healthy' && (
        <p class="soft">{huntWords().theseReadingsCannotSeeEverything}</p>
      )}
      <Grounds
        circuit={work.circuit}
        reports={reportsOf(assessment, verdict.grounds)}
        title={huntWords().whatSpeaksForIt}
      />
      {pieces > 1 && (
        <Grounds
          circuit={work.circuit}
          reports={reportsOf(
            assessment,
            (verdict.ruledOut ?? []).map(({ reading }) => reading),
          )}
          title={huntWords().whatRulesTheRestOut}
          ruledOut={verdict.ruledOut}
        />
      )}
      {pieces > 2 && (
        <Grounds
          circuit={work.circuit}
          reports={reportsOf(assessment, verdict.against)}
          title={huntWords().whatSpeaksAgainstIt}
        />
      )}
    </>
  );
}

function Outside({ assessment, verdict }: { assessment: Assessment; verdict: Found }) {
  return (
    <>
      <p>{huntWords().theWiringMayNotBeTheOne}</p>
      {verdict.steps.length > 0 && <Steps steps={verdict.steps} />}
      <h2>{huntWords().closestSoFar}</h2>
      <Suspects
        suspects={assessment.suspects.filter(({ repair }) => repair !== 'something else')}
        most={3}
      />
    </>
  );
}

/** One place a repair, the likeliest first. */
function placesOf(assessment: Assessment, verdict: Found): readonly string[] {
  if (verdict.kind !== 'cannot-tell-apart') return verdict.sites.slice(0, 1);
  return verdict.repairs.flatMap((repair) => {
    const suspect = assessment.suspects.find((one) => one.repair === repair);
    return suspect?.faults[0]?.sites.slice(0, 1) ?? [];
  });
}

const reportsOf = (assessment: Assessment, ids: readonly string[]): readonly ReadingReport[] =>
  assessment.readings.filter(({ id }) => ids.includes(id));
