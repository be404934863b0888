import { Fragment } from 'preact';
import type { Circuit } from '../../circuit/circuit.ts';
import type { ReadingReport, Verdict } from '../../diagnosis/assessment.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { Expected } from '../pieces/expected.tsx';
import { Mark } from '../pieces/mark.tsx';
import { Table } from '../pieces/table.tsx';
import { held, inSentence, placeWords, settingWords, siteWords } from '../words.ts';

interface GroundsProps {
  readonly circuit: Circuit;
  readonly reports: readonly ReadingReport[];
  readonly title: string;
  /** What each reading rules out, said beneath it. */
  readonly ruledOut?: Verdict['ruledOut'];
}

/** As many of the repairs that a reading rules out are named; the rest are counted. */
const NAMED = 2;

/** Readings as a table: where, healthy, seen, and whether they fit. */
export function Grounds({ circuit, reports, title, ruledOut = [] }: GroundsProps) {
  if (reports.length === 0) return null;
  return (
    <Table
      title={title}
      columns={[huntWords().reading, huntWords().healthy2, huntWords().youSaw]}
      rows={reports.map(({ id, ask, expected, measuredText, fits, stale, apart }) => ({
        key: id,
        class: stale ? 'stale' : undefined,
        head: (
          <>
            {apart
              ? huntWords().siteMeasuredOutOfCircuit(siteWords(circuit, apart))
              : [placeWords(circuit, ask), settingWords(circuit, ask)].filter(Boolean).join(', ')}
            {stale && <span class="soft"> {huntWords().beforeTheRepair}</span>}
          </>
        ),
        cells: [
          <Expected key="healthy" expected={expected} />,
          <Fragment key="seen">
            {held(measuredText)} <Mark fits={fits} short />
          </Fragment>,
        ],
        below: ruledOut
          .filter(({ reading }) => reading === id)
          .map(({ titles }) =>
            huntWords().elseItWouldBe(
              titles.slice(0, NAMED).map(inSentence),
              Math.max(0, titles.length - NAMED),
            ),
          ),
      }))}
    />
  );
}
