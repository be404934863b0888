import type { ComponentChildren } from 'preact';
import type { TogetherSheet } from '../../notebook/index.ts';
import { type Heard, type Pair, type Turn, together } from '../../sorter/together.ts';
import { readingWords } from '../../words/en/readings.ts';
import { togetherWords } from '../../words/en/together.ts';
import { KeepSheet } from '../pieces/kept-sheet.tsx';
import { Screen } from '../pieces/screen.tsx';
import { Table } from '../pieces/table.tsx';
import { hrefOf } from '../route.ts';
import { capital } from '../words.ts';
import { theTitled } from './pickup-names.ts';
import { TogetherPositions } from './together-positions.tsx';
import { FROM_THE_MAT } from './together-telling.tsx';
import { humWords, pairWords, phaseWords } from './together-words.ts';

interface TogetherResultProps {
  readonly strip: ComponentChildren;
  readonly sheet: TogetherSheet;
  readonly heard: readonly Heard[];
  onMeant(meant: NonNullable<TogetherSheet['meant']>): void;
  onAgain(pickup: string): void;
  /** There is a compass after all. */
  onCompass(): void;
}

/** Which pairs fight, what to turn, and what each position of the wiring makes of it. */
export function TogetherResult({
  strip,
  sheet,
  heard,
  onMeant,
  onAgain,
  onCompass,
}: TogetherResultProps) {
  const titleOf = (id: string) => sheet.pickups.find((one) => one.id === id)?.title ?? id;
  // A pickup that is still on the mat is the one to turn; those that are built in stay.
  const onMat = sheet.pickups.some(({ id }) => id === FROM_THE_MAT);
  const others = sheet.pickups.filter(({ id }) => id !== FROM_THE_MAT);
  const fixed = onMat && others.length === 1 ? (others[0]?.id ?? null) : null;
  const found = together(heard, fixed);
  const turns = Object.entries(found.mend).filter(([, turn]) => turn !== 'none');
  // Without a compass no pole is known, which is said once.
  const amiss = heard.filter(
    (one) => one.amiss !== null && !(sheet.noCompass && one.amiss === 'no pole'),
  );
  return (
    <Screen
      name="together-result"
      title={phaseWords(sheet, found.pairs)}
      strip={strip}
      acts={
        <a class="main" href={hrefOf({ at: 'home' })}>
          {togetherWords().home}
        </a>
      }
    >
      {amiss.map(({ id, amiss: what }) => (
        <div key={id} class="sentence">
          <p>{amissWords(titleOf(id), what)}</p>
          <button type="button" class="quiet" onClick={() => onAgain(id)}>
            {togetherWords().takeItsReadingsAgain}
          </button>
        </div>
      ))}
      {sheet.noCompass && (
        <div class="sentence">
          <p>{togetherWords().withoutPolesHumStaysOpen}</p>
          <button type="button" class="quiet" onClick={onCompass}>
            {togetherWords().iHaveACompass}
          </button>
        </div>
      )}
      {found.pairs.length > 0 && (
        <Pairs pairs={found.pairs} sheet={sheet} caption={togetherWords().asTheyAre} />
      )}
      {turns.map(([id, turn]) => (
        <TurnSentence key={id} title={titleOf(id)} turn={turn} onMat={id === FROM_THE_MAT} />
      ))}
      {turns.length > 0 && found.pairs.some(({ hum }) => hum === null) && (
        <p role="note" class="soft">
          {togetherWords().listenToTheHumFirst}
        </p>
      )}
      {turns.length > 0 && (
        <Pairs pairs={found.mended} sheet={sheet} caption={togetherWords().afterThat} />
      )}
      {found.pairs.length > 0 && (
        <TogetherPositions sheet={sheet} heard={heard} mend={found.mend} onMeant={onMeant} />
      )}
      <details>
        <summary>{togetherWords().whatWasSeen}</summary>
        <Table
          rows={heard.flatMap(({ id, coils }) =>
            coils.map(({ coil, tap, pole }) => ({
              key: `${id} ${coil}`,
              head: `${capital(titleOf(id))}${
                sheet.pickups.find((one) => one.id === id)?.coils === 2
                  ? togetherWords()[coil === 'a' ? 'commaScrewCoil' : 'commaSlugCoil']
                  : ''
              }`,
              cells: [
                readingWords().swing[tap > 0 ? 'plus' : 'minus'],
                pole === null
                  ? togetherWords().poleNotTold
                  : togetherWords()[pole > 0 ? 'northUp' : 'southUp'],
              ],
            })),
          )}
        />
      </details>
      <KeepSheet sheet={sheet} />
    </Screen>
  );
}

function Pairs({
  pairs,
  sheet,
  caption,
}: {
  pairs: readonly Pair[];
  sheet: TogetherSheet;
  caption: string;
}) {
  return (
    <Table
      title={caption}
      rows={pairs.map((pair) => ({
        key: `${pair.first} ${pair.second}`,
        head: capital(pairWords(sheet, pair)),
        cells: [pair.fights ? togetherWords().fight : togetherWords().inPhase, humWords(pair.hum)],
        data: { 'data-fights': pair.fights },
      }))}
    />
  );
}

/** Leads or magnet, and what has to be minded. */
function TurnSentence({ title, turn, onMat }: { title: string; turn: Turn; onMat: boolean }) {
  if (turn === 'leads')
    return (
      <>
        <p class="sentence">
          {onMat
            ? togetherWords().putTheTitledInTheOtherWay(theTitled(title))
            : togetherWords().exchangeTheHotAndTheColdLead2(theTitled(title))}
        </p>
        <p role="note" class="soft">
          {togetherWords().bareWirePlateAndCoverStay}
        </p>
      </>
    );
  return (
    <>
      <p class="sentence">{togetherWords().turnTheMagnetOfTheTitledIts(theTitled(title))}</p>
      <p role="note" class="soft">
        {togetherWords().aBarMagnetUnderTheCoilsIs}
      </p>
    </>
  );
}

function amissWords(title: string, what: Heard['amiss']): string {
  switch (what) {
    case 'coils fight':
      return togetherWords().theTwoCoilsOfTheTitledSwing(theTitled(title));
    case 'no swing':
      return togetherWords().theTitledShowsNoSwingThat(capital(theTitled(title)));
    default:
      return togetherWords().thePoleOfTheTitledCouldNot(theTitled(title));
  }
}
