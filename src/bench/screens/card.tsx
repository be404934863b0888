import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Circuit } from '../../circuit/circuit.ts';
import type { ReadingReport } from '../../diagnosis/assessment.ts';
import type { Card } from '../../diagnosis/card.ts';
import type { CardBasis } from '../../diagnosis/card-basis.ts';
import type { CardLine } from '../../diagnosis/card-lines.ts';
import type { Job } from '../../notebook/job.ts';
import type { Ask } from '../../readings/reading.ts';
import { called } from '../../words/called.ts';
import { cardWords } from '../../words/en/card.ts';
import { useGrowing } from '../growing.ts';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { hrefOf } from '../route.ts';
import type { CardContext } from './card-row.tsx';
import { JackTable, LinesTable } from './card-rows.tsx';
import { Grounds } from './grounds.tsx';

interface CardProps {
  readonly strip: preact.ComponentChildren;
  readonly job: Job;
  readonly reports: readonly ReadingReport[];
  onTake(ask: Ask, then: 'card' | 'hunt'): void;
}

type Found =
  | { readonly is: 'working' }
  | { readonly is: 'ready'; readonly card: Card }
  | { readonly is: 'failed'; readonly sentence: string };

/** The reading card: what the meter shows all over a healthy guitar. To tap at the bench, or to print on one page. */
export function ReadingCard({ strip, job, reports, onTake }: CardProps) {
  const { engine } = usePorts();
  const [found, setFound] = useState<Found>({ is: 'working' });
  const [open, setOpen] = useState<Ask | null>(null);
  const { circuit, meter, readings, repairs, closedAt } = job;
  const ask = () => {
    let wanted = true;
    engine.card({ circuit, meter, readings, repairs: repairs.map(({ repair }) => repair) }).then(
      (card) => wanted && setFound({ is: 'ready', card }),
      (error: unknown) =>
        wanted &&
        setFound({
          is: 'failed',
          sentence: error instanceof Error ? error.message : cardWords().noReasonWasGiven,
        }),
    );
    return () => {
      wanted = false;
    };
  };
  useEffect(ask, [engine, circuit, meter, readings, repairs]);
  const context: CardContext = {
    circuit,
    reports,
    open,
    closed: closedAt !== undefined,
    onOpen: setOpen,
    onTake,
  };
  return (
    <Screen
      name="card"
      title={cardWords().whatItShouldRead}
      strip={strip}
      acts={
        <>
          <button
            type="button"
            class="plain"
            disabled={found.is !== 'ready'}
            onClick={() => window.print()}
          >
            {cardWords().print}
          </button>
          <a class="main" href={hrefOf({ at: 'job', id: job.id, view: 'hunt' })}>
            {cardWords().toTheHunt}
          </a>
        </>
      }
    >
      <p class="card-name">
        <strong class="print-only">{job.title}: </strong>
        {called(circuit.title)}
      </p>
      {found.is === 'working' && <p class="soft">{cardWords().workingItOut}</p>}
      {found.is === 'failed' && (
        <>
          <p role="alert">{cardWords().theCardCouldNotBeMadeSentence(found.sentence)}</p>
          <p>
            <button type="button" class="plain" onClick={() => ask()}>
              {cardWords().tryAgain}
            </button>
          </p>
        </>
      )}
      {found.is === 'ready' && <CardBody card={found.card} context={context} />}
    </Screen>
  );
}

const parts: readonly {
  readonly group: CardLine['group'];
  readonly title: string;
  readonly how: string;
}[] = [
  {
    group: 'knobs',
    get title() {
      return cardWords().turningAKnobAtTheJack;
    },
    get how() {
      return cardWords().from0To10TheOthersAt;
    },
  },
  {
    group: 'pickups',
    get title() {
      return cardWords().pickupsInside;
    },
    get how() {
      return cardWords().nothingUnsolderedEveryKnob;
    },
  },
  {
    group: 'pots',
    get title() {
      return cardWords().potsInside;
    },
    get how() {
      return cardWords().theWiperIsTurnedFrom0To;
    },
  },
  {
    group: 'small',
    get title() {
      return cardWords().smallPartsInside;
    },
    get how() {
      return cardWords().oneLegUnsoldered;
    },
  },
  {
    group: 'switches',
    get title() {
      return cardWords().switchesInside;
    },
    get how() {
      return cardWords().theseBeepAndOnlyThere;
    },
  },
  {
    group: 'grounds',
    get title() {
      return cardWords().grounds;
    },
    get how() {
      return cardWords().bOnTheSleeveOfTheJack;
    },
  },
];

function CardBody({ card, context }: { readonly card: Card; readonly context: CardContext }) {
  const count = card.jack.length + card.lines.length;
  // The jack first, some rows at a time, then one table after the other; none is made anew when the next one comes.
  const jackSteps = Math.max(1, Math.ceil(card.jack.length / ROWS_TOGETHER));
  const grown = useGrowing(parts.length + jackSteps);
  const rows = Math.min(card.jack.length, ROWS_TOGETHER * grown);
  const jack = useMemo(
    () => <JackTable rows={card.jack} shown={rows} context={context} />,
    [card, context, rows],
  );
  const tables = useMemo(
    () =>
      parts.map(({ group, title, how }) => (
        <LinesTable
          key={group}
          title={title}
          how={how}
          lines={card.lines.filter((line) => line.group === group)}
          context={context}
        />
      )),
    [card, context],
  );
  return (
    <div class={`card ${count > DENSE ? 'card-dense' : count < ROOMY ? 'card-roomy' : ''}`}>
      <Basis basis={card.basis} context={context} />
      {card.odd.length > 0 && (
        <p class="sentence">
          {cardWords().oddHereStandsWhatIsMeant(oddWords(context.circuit, card.odd))}
        </p>
      )}
      <p class="soft">{cardWords().unplugTheGuitarFromTheAmplifier(card.sigma)}</p>
      <section class="card-part">
        <h2>{cardWords().atTheJack}</h2>
        <p class="soft">{cardWords().rOnTheTipBOnThe(rowsWords(card))}</p>
        {jack}
      </section>
      {tables.slice(0, Math.max(0, grown - jackSteps))}
    </div>
  );
}

/** As many rows are drawn in one task. */
const ROWS_TOGETHER = 8;

/** More rows than this are set smaller on paper, to stay on one page; fewer than that larger. */
const DENSE = 60;
const ROOMY = 36;

const oddWords = (circuit: Circuit, odd: Card['odd']): string =>
  cardWords().measuredFarFromWhatIsPrinted(
    odd.map((id) => called(circuit.parts.find((part) => part.id === id)?.title ?? id)).join(', '),
  );

function rowsWords({ rowsBy, thrown }: Card): string {
  const by = {
    figure: '',
    coils: cardWords().theSettingsAreManyEachRow,
    'number of coils': cardWords().theSettingsAreManyEachRow2,
  }[rowsBy];
  const few = thrown === undefined ? '' : cardWords().noMoreThanThrownSwitchesAre(thrown);
  return [by, few].filter(Boolean).join(' ');
}

function Basis({ basis, context }: { readonly basis: CardBasis; readonly context: CardContext }) {
  switch (basis.kind) {
    case 'parts':
      return <p>{cardWords().fromTheValuesOfThePartsAnd}</p>;
    case 'readings':
      return <p>{cardWords().narrowerForReadings(basis.count)}</p>;
    case 'contradicted':
      return (
        <>
          <p role="alert">{cardWords().doNotFit(basis.reports.length)}</p>
          <Grounds
            circuit={context.circuit}
            reports={basis.reports}
            title={cardWords().doesNotFit}
          />
        </>
      );
  }
}
