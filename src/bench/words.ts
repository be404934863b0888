import type { Circuit } from '../circuit/circuit.ts';
import { EVERYWHERE } from '../circuit/edit.ts';
import { jointTitle, pointTitle, siteTitle } from '../circuit/names.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { potsOf, restingSetting, settingKey } from '../circuit/setting.ts';
import type { Probability } from '../circuit/units.ts';
import type { ClosingItem } from '../closing/closing.ts';
import type { Stage } from '../closing/stage.ts';
import type { Expectation } from '../diagnosis/assessment.ts';
import { type LastAct, type Question, selectorOf } from '../flows/index.ts';
import { formatFarads, formatOhms } from '../readings/entry.ts';
import { humText } from '../readings/hum.ts';
import type { Ask, Seen } from '../readings/reading.ts';
import { benchWords } from '../words/en/bench.ts';
import { diagnosisWords } from '../words/en/diagnosis.ts';
import { readingWords } from '../words/en/readings.ts';
import { heardWords } from './entry/choices.tsx';

/** Places in the words the engine uses for them. */
export const pointWords = (circuit: Circuit, node: string): string =>
  pointTitle(layoutOf(circuit), node);
export const siteWords = (circuit: Circuit, site: string): string =>
  siteTitle(layoutOf(circuit), site);

/** The act in words: the engine's own, or for a reading of the person's own "R on ..., B on ...", or how it is listened for. */
export function questionWords(circuit: Circuit, { ask, askText }: Question): string {
  if (askText) return askText;
  if (ask.kind === 'listen') return readingWords().plugInAtLowVolumeSetThe;
  if (ask.kind === 'touch')
    return readingWords().plugInAtLowVolumeAndTouch(pointWords(circuit, ask.metal));
  if (!('red' in ask)) return askText;
  return benchWords().rOnPointBOnPoint2(
    pointWords(circuit, ask.red),
    pointWords(circuit, ask.black),
  );
}

/** "97 %". Below one it says so; nothing is ever 0 or 100. */
export function percent(probability: Probability | number): string {
  const share = 100 * probability;
  if (share < 1) return benchWords().under1Percent;
  return share > 99 ? benchWords().over99Percent : `${Math.round(share)}\u00a0%`;
}

/** How sure, in words. */
export function sureness(probability: Probability): string {
  if (probability >= 0.98) return benchWords().asGoodAsCertain;
  if (probability >= 0.95) return benchWords().veryLikely;
  return probability >= 0.8 ? benchWords().likely : benchWords().moreLikelyThanTheRest;
}

/** A figure and its unit stay on one line. */
export const held = (text: string): string => text.replace(/(\d) (?=[kM]?Ω|[pnµ]F|%)/g, '$1\u00a0');

/** "7.0 to 7.9 kΩ". Empty where the words say the band already, or there is none. */
export function bandWords({ text, low, high }: Expectation): string {
  if (low === undefined || high === undefined || diagnosisWords().saysBand(text)) return '';
  const [from, to] = [formatOhms(low), formatOhms(high)];
  const unit = to.replace(/^[\d.,]+/, '');
  return benchWords().fromTo(from.endsWith(unit) ? from.slice(0, -unit.length) : from, to);
}

/** What was seen, short: "430 kΩ", "beeps". */
export function seenWords(seen: Seen): string {
  switch (seen.kind) {
    case 'ohms':
      return formatOhms(seen.ohms, 4);
    case 'beep':
      return seen.beeps ? readingWords().beeps : readingWords().silent;
    case 'turn': {
      const how = readingWords().turn[seen.how];
      return seen.peak === undefined ? how : benchWords().atMost(how, formatOhms(seen.peak, 4));
    }
    case 'flex':
      return benchWords().flex[seen.how];
    case 'look':
      return benchWords().look[seen.how];
    case 'tap':
      return readingWords().swing[seen.swing];
    case 'farads':
      return formatFarads(seen.farads);
    case 'listen':
      return (
        heardWords()
          .find(({ heard }) => heard === seen.heard)
          ?.says.toLowerCase() ?? seen.heard
      );
    case 'touch':
      return benchWords().hum[seen.hum];
    case 'hum':
      return humText(seen.decibels);
    case 'pole':
      return benchWords().pole[seen.pole];
  }
}

/** A reading by its place, short enough for a table: "At the jack", "lug 3 of the volume to its case". */
export function placeWords(circuit: Circuit, ask: Ask): string {
  if ('red' in ask) {
    const ends = [ask.red, ask.black];
    const atJack = ['tip', 'sleeve'].every((lug) => ends.some((end) => end === `jack.${lug}`));
    const [red, black] = [shortPoint(circuit, ask.red), shortPoint(circuit, ask.black)];
    return kindWords(
      circuit,
      ask,
      atJack ? benchWords().atTheJack : benchWords().pointToPoint(red, black),
    );
  }
  switch (ask.kind) {
    case 'listen':
      return benchWords().sound;
    case 'touch':
      return benchWords().humAHandOnPoint(pointWords(circuit, ask.metal));
    case 'hum':
      return benchWords().humAgainst(settingWords(circuit, { ...ask, setting: ask.against }));
    case 'look':
      return siteWords(circuit, ask.at);
    case 'pole':
      return benchWords().theMagnetOfSite(siteWords(circuit, ask.coil));
  }
}

const shortPoint = (circuit: Circuit, node: string): string =>
  node.includes('@')
    ? jointTitle(layoutOf(circuit), node, 'jointShort')
    : pointWords(circuit, node);

function kindWords(circuit: Circuit, ask: Extract<Ask, { red: string }>, place: string): string {
  switch (ask.kind) {
    case 'ohms':
      return place;
    case 'beep':
      return benchWords().beepAt(place);
    case 'farads':
      return benchWords().capacitanceAt(place);
    case 'turn':
      return benchWords().turningAt(siteWords(circuit, ask.pot), place);
    case 'tap':
      return benchWords().tapAt(siteWords(circuit, ask.coil), place);
    case 'flex':
      if (ask.site === EVERYWHERE) return benchWords().allMovedAt(place);
      return benchWords().movingAt(siteWords(circuit, ask.site), place);
  }
}

/** Where the selector and the knobs that were turned down stand, for a list of readings. */
export function settingWords(circuit: Circuit, ask: Ask): string {
  const { setting } = ask;
  const selector = selectorOf(circuit);
  const position = selector?.positions.find(({ name }) => name === setting.positions[selector.id]);
  const turned = ask.kind === 'turn' ? ask.pot : undefined;
  const knobs = potsOf(circuit)
    .filter(({ id }) => id !== turned && (setting.knobs[id] ?? 10) !== 10)
    .map(({ id, title }) => benchWords().titleAtKnobs(title, setting.knobs[id] ?? 10));
  return [...(position ? [benchWords().positionSelected(position.title)] : []), ...knobs].join(
    ', ',
  );
}

/** What undo took back. */
export function takenBackWords(act: LastAct | null): string {
  switch (act?.kind) {
    case undefined:
      return '';
    case 'readings': {
      const [first] = act.readings;
      if (!first || (act.readings.length > 1 && ['listen', 'hum'].includes(first.ask.kind)))
        return benchWords().takenBackWhatYouHeard;
      return benchWords().takenBackSeen(seenWords(first.seen));
    }
    case 'refusal':
      return benchWords().takenBackCantReachIt;
    case 'repair':
      return benchWords().takenBackRepair(act.repair.title);
    case 'cautions':
      return benchWords().backAtTheCautions;
    case 'closing':
      return benchWords().theJobIsOpenAgain;
  }
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A title within a sentence. */
export const inSentence = (title: string): string => title.charAt(0).toLowerCase() + title.slice(1);

/** How far a guitar is put together. */
export const stageWords = (stage: Stage): string => benchWords().stage[stage];

/** What passes a line of a closing check. A figure passes within four deviations of what the others foretell. */
export function passWords({ ask, expected, passes }: ClosingItem): string {
  const down = Object.values(ask.setting.knobs).some((figure) => figure < 10);
  if (ask.kind === 'listen' && down && expected.text === readingWords().heard.normal)
    return benchWords().normalForAKnobTurnedDown;
  if (!passes) return expected.text;
  return ask.kind === 'turn'
    ? benchWords().smoothHighestBandOf(bandOf({ passes }))
    : bandOf({ passes });
}

/** The figures that pass. Empty where the answer is no figure. */
export function bandOf({ passes }: Pick<ClosingItem, 'passes'>): string {
  if (!passes) return '';
  return passes.low < 1
    ? benchWords().belowHigh(formatOhms(passes.high, 2))
    : bandWords({ text: '', ...passes });
}

/** A reading with how the controls stand, short enough for a line. Inside, the resting setting goes without saying. */
export function closingPlace(circuit: Circuit, ask: Ask): string {
  const place = benchWords().shortPlace(placeWords(circuit, ask));
  const resting = settingKey(ask.setting) === settingKey(restingSetting(circuit));
  const inside = 'red' in ask && !place.endsWith(benchWords().atTheJack);
  const setting = inside && resting ? '' : settingWords(circuit, ask);
  return [place, setting].filter(Boolean).join(', ');
}

/** "12 minutes". */
export function minutes(seconds: number): string {
  const count = Math.max(1, Math.round(seconds / 60));
  return benchWords().minutes(count);
}
