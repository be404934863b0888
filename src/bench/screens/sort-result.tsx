import type { ComponentChildren } from 'preact';
import type { SortContext } from '../../flows/sort.ts';
import type { PickupSheet } from '../../notebook/index.ts';
import { joinings } from '../../sorter/joins.ts';
import { cancelsHum } from '../../sorter/poles.ts';
import type { Sorting } from '../../sorter/sort.ts';
import { matWords } from '../../words/en/mat.ts';
import { KeepSheet } from '../pieces/kept-sheet.tsx';
import { Screen } from '../pieces/screen.tsx';
import { Table } from '../pieces/table.tsx';
import { hrefOf } from '../route.ts';
import type { SortSay } from '../sort-actor.ts';
import { percent } from '../words.ts';
import { SortJoinings } from './sort-joinings.tsx';
import { leadNames, roleWords, troubleWords } from './sort-words.ts';
import { SortedDrawing } from './sorted-drawing.tsx';

interface SortResultProps {
  readonly strip: ComponentChildren;
  readonly sheet: PickupSheet;
  readonly context: SortContext;
  readonly say: SortSay;
}

const titles = {
  get settled() {
    return matWords().whichLeadDoesWhat;
  },
  get stuck() {
    return matWords().asFarAsReadingsCanTell;
  },
  get outside() {
    return matWords().thisFitsNothingThatIKnow;
  },
  get asking() {
    return matWords().asFarAsItIsKnown;
  },
} as const;

/** Each lead with its place, the ways to join them, and what is still open. */
export function SortResult({ strip, sheet, context, say }: SortResultProps) {
  const { sorting, work } = context;
  if (!sorting) return null;
  const { seen } = work;
  const known = sorting.state === 'settled';
  const ways = known ? joinings(sorting, seen) : [];
  /** Where each lead is as good as certain the sentence below says it once. */
  const doubt = sorting.leads.some(({ probability }) => probability < 0.99);
  return (
    <Screen
      name="sort-result"
      title={titles[sorting.state]}
      strip={strip}
      acts={
        <>
          <a class="plain" href={hrefOf({ at: 'together', beside: sheet.id })}>
            {matWords().besideAnotherPickup}
          </a>
          {known && (
            <a class="main" href={hrefOf({ at: 'pickup', id: sheet.id, view: 'job' })}>
              {matWords().intoAGuitar}
            </a>
          )}
        </>
      }
    >
      <div class="sorted-drawing">
        <SortedDrawing seen={seen} leads={sorting.leads} />
      </div>
      <Table
        rows={sorting.leads.map(({ lead, role, probability }) => ({
          key: lead,
          head: leadNames(seen, [lead]),
          cells: [roleWords(seen, role), ...(doubt ? [percent(probability)] : [])],
          data: { 'data-lead': leadNames(seen, [lead]), 'data-role': role },
        }))}
      />
      <p class="soft">{matWords().isTheEndThatSwingsToPlus(percent(sorting.probability))}</p>
      <Disagreement sorting={sorting} say={say} />
      <Troubles sorting={sorting} words={(trouble) => troubleWords(seen, trouble)} />
      {sorting.state === 'outside' && <p>{matWords().severalReadingsMayBeWrong}</p>}
      {ways.length > 0 && <SortJoinings seen={seen} leads={sorting.leads} ways={ways} />}
      {seen.coils === 2 && known && <HumAlone sorting={sorting} say={say} />}
      <p class="row no-print">
        {known && (
          <button type="button" class="quiet" onClick={() => window.print()}>
            {matWords().printTheseTables}
          </button>
        )}
        {sorting.next.length > 0 && (
          <button type="button" class="quiet" onClick={() => say({ type: 'SURER' })}>
            {matWords().oneMoreReadingToBeSurer}
          </button>
        )}
        {work.refused.length > 0 && (
          <button type="button" class="quiet" onClick={() => say({ type: 'ASK_REFUSED' })}>
            {matWords().askAgainWhatICouldNotDo}
          </button>
        )}
      </p>
      <div class="no-print">
        <KeepSheet sheet={sheet} />
      </div>
    </Screen>
  );
}

/** Readings that cannot both be right are named, never averaged. */
function Disagreement({ sorting, say }: { sorting: Sorting; say: SortSay }) {
  const { contradiction } = sorting;
  if (!contradiction) return null;
  const [repeat, other] = contradiction.texts;
  return (
    <div role="status" class="sentence">
      <p>{matWords().theseTwoReadingsCannotBoth}</p>
      <ul>
        <li>{repeat}</li>
        <li>{other}</li>
      </ul>
      <button
        type="button"
        class="plain"
        onClick={() => say({ type: 'REPEAT', reading: contradiction.readings[0] })}
      >
        {matWords().repeatTheFirstOne}
      </button>
    </div>
  );
}

/** Whether the two coils cancel hum between them, from their poles. */
function HumAlone({ sorting, say }: { sorting: Sorting; say: SortSay }) {
  const cancels = cancelsHum(sorting.poles);
  return (
    <p>
      {cancels === null
        ? matWords().whetherItsTwoCoilsCancelHum
        : cancels
          ? matWords().itsCoilsHaveOppositePoles
          : matWords().bothTopsHaveTheSamePoleJoined}{' '}
      {sorting.poleAsks.length > 0 && (
        <button type="button" class="quiet" onClick={() => say({ type: 'POLES' })}>
          {matWords().readThePolesWithACompass}
        </button>
      )}
    </p>
  );
}

/** More likely than not it is said; what is only not ruled out is said as such. */
function Troubles({
  sorting,
  words,
}: {
  sorting: Sorting;
  words(trouble: Sorting['troubles'][number]['trouble']): string;
}) {
  const found = sorting.troubles.filter(({ probability }) => probability > 0.5);
  const left = sorting.troubles.filter(
    ({ probability }) => probability > 0.02 && probability <= 0.5,
  );
  return (
    <>
      {found.map(({ trouble, probability }) => (
        <p key={JSON.stringify(trouble)} class="sentence">
          {matWords().foundProbabilityWords(percent(probability), words(trouble))}
        </p>
      ))}
      {left.length > 0 && (
        <details>
          <summary>{matWords().whatTheseReadingsDoNotRule}</summary>
          <ul>
            {left.map(({ trouble, probability }) => (
              <li key={JSON.stringify(trouble)}>
                {words(trouble)} ({percent(probability)})
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
