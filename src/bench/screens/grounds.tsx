import type { Circuit } from '../../circuit/circuit.ts';
import type { ReadingReport } from '../../diagnosis/assessment.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { Expected } from '../pieces/expected.tsx';
import { Mark } from '../pieces/mark.tsx';
import { held, placeWords, settingWords, siteWords } from '../words.ts';

interface GroundsProps {
  readonly circuit: Circuit;
  readonly reports: readonly ReadingReport[];
  readonly title: string;
}

/** Readings as a table: where, healthy, seen, and whether they fit. */
export function Grounds({ circuit, reports, title }: GroundsProps) {
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
          <tr key={id} class={stale ? 'stale' : undefined}>
            <th scope="row">
              {apart
                ? huntWords().siteMeasuredOutOfCircuit(siteWords(circuit, apart))
                : [placeWords(circuit, ask), settingWords(circuit, ask)].filter(Boolean).join(', ')}
              {stale && <span class="soft"> {huntWords().beforeTheRepair}</span>}
            </th>
            <td>
              <Expected expected={expected} />
            </td>
            <td>
              {held(measuredText)} <Mark fits={fits} short />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
