import { Fragment } from 'preact';
import type { Circuit } from '../../circuit/circuit.ts';
import type { ReadingReport, Verdict } from '../../diagnosis/assessment.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { Expected } from '../pieces/expected.tsx';
import { Mark } from '../pieces/mark.tsx';
import { held, placeWords, settingWords, siteWords } from '../words.ts';

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
    <table class="grounds">
      <caption>{title}</caption>
      <thead>
        <tr>
          <th scope="col">{huntWords().reading}</th>
          <th scope="col">{huntWords().healthy2}</th>
          <th scope="col">{huntWords().youSaw}</th>
        </tr>
      </thead>
      <tbody>
        {reports.map(({ id, ask, expected, measuredText, fits, stale, apart }) => (
          <Fragment key={id}>
            <tr class={stale ? 'stale' : undefined}>
              <th scope="row">
                {apart
                  ? huntWords().siteMeasuredOutOfCircuit(siteWords(circuit, apart))
                  : [placeWords(circuit, ask), settingWords(circuit, ask)]
                      .filter(Boolean)
                      .join(', ')}
                {stale && <span class="soft"> {huntWords().beforeTheRepair}</span>}
              </th>
              <td>
                <Expected expected={expected} />
              </td>
              <td>
                {held(measuredText)} <Mark fits={fits} short />
              </td>
            </tr>
            {ruledOut
              .filter(({ reading }) => reading === id)
              .map(({ titles }) => (
                <tr key={`${id} else`} class="ruled-out">
                  <td colSpan={3}>
                    {huntWords().elseItWouldBe(
                      titles.slice(0, NAMED),
                      Math.max(0, titles.length - NAMED),
                    )}
                  </td>
                </tr>
              ))}
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}
