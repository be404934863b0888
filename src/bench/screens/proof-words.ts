import type { Closing } from '../../closing/closing.ts';
import type { DoneCheck } from '../../flows/index.ts';
import type { Job } from '../../notebook/job.ts';
import { formatOhms } from '../../readings/entry.ts';
import type { Meter } from '../../readings/reading.ts';
import { tongue } from '../../words/area.ts';
import { called } from '../../words/called.ts';
import { proofWords } from '../../words/en/proof.ts';
import { figure } from '../../words/figures.ts';
import { capital, closingPlace, stageWords } from '../words.ts';

/** What the page says in sentences, for the screen, the paper and the file alike. */

export const whenWords = (check: DoneCheck): string =>
  new Date(check.endedAt ?? check.startedAt).toLocaleDateString(tongue().locale, {
    year: 'numeric',
    month: 'long',
    day: 'numeric',
  });

export function withWords({ meter }: { readonly meter: Meter }, check: DoneCheck): string {
  const limit = formatOhms(meter.limit);
  const room =
    check.celsius === undefined
      ? proofWords().roomTemperatureNotTold
      : proofWords().roomAtCelsiusC(figure(check.celsius));
  return proofWords().stageMeterGoodToWhatUpTo(
    stageWords(check.stage),
    figure(Math.round(1000 * meter.accuracy) / 10),
    limit,
    formatOhms(meter.leads),
    room,
  );
}

/** Of a check that was ended early only what was read. */
export const wasRead = ({ items }: Closing): Closing['items'] =>
  items.filter(({ answers }) => answers.length > 0);

export const countWords = ({ readings, atLeast, items, state }: Closing): string =>
  state === 'passed'
    ? proofWords().countPointsReadingsReadings(items.length, readings, atLeast)
    : items.some(({ mark }) => mark === 'again' || mark === 'failed')
      ? proofWords().countOfCount2PointsAsAHealthy(fitting(items), items.length)
      : proofWords().aShortCheck(fitting(items), items.length);

const fitting = (items: Closing['items']): number =>
  items.filter(({ mark }) => mark === 'fits').length;

/** "The neck pickup at the jack: 3 % up; a coil 8 °C warmer does that." */
export const changeWords = (job: Job, { changes }: Closing): readonly string[] =>
  changes.map(({ ask, share, before, now, warmer }) => {
    const percent = Math.max(1, Math.round(100 * Math.abs(share)));
    const say = proofWords();
    const changed = say[share > 0 ? 'wentUp' : 'wentDown'](
      capital(closingPlace(job.circuit, ask)),
      percent,
      formatOhms(now, 3),
      formatOhms(before, 3),
    );
    if (warmer === undefined) return say.changed(changed);
    const degrees = Math.max(1, Math.round(Math.abs(warmer)));
    return say[warmer > 0 ? 'changedWarmer' : 'changedColder'](changed, degrees);
  });

export const learnedWords = ({ learned }: Closing): readonly string[] =>
  learned
    .filter(({ spread }) => spread < 0.3)
    .map(({ title, nominal, estimate, spread }) =>
      proofWords().titleEstimateMaxPrintedNominal(
        capital(called(title)),
        formatOhms(estimate),
        Math.max(1, Math.round(100 * spread)),
        formatOhms(nominal),
      ),
    );

/** Places of one kind, so many of them in full. */
export function placesWords(places: readonly string[], most: number): string {
  const told = places.slice(0, most).join('; ');
  const more = places.length - most;
  return more > 0 ? proofWords().toldAndMoreMore(told, more) : told;
}
