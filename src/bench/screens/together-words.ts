import type { TogetherSheet } from '../../notebook/index.ts';
import type { CoilAsk, Pair } from '../../sorter/together.ts';
import { togetherWords } from '../../words/en/together.ts';
import { capital } from '../words.ts';
import { theTitled } from './pickup-names.ts';

/** What is left of the hum, in words. */
export const humWords = (hum: number | null): string =>
  hum === null
    ? togetherWords().humNotKnown
    : hum < 0.15
      ? togetherWords().cancelHum
      : hum > 0.85
        ? togetherWords().hum
        : togetherWords().humLess;

/** The act that is asked for, and for a tap how it is taken of this pickup. */
export function coilAskWords(
  { pickups }: Pick<TogetherSheet, 'pickups'>,
  { pickup: id, coil, kind, again }: CoilAsk,
): { readonly act: string; readonly where: string | null } {
  const pickup = pickups.find((one) => one.id === id);
  const owner = theTitled(pickup?.title ?? id);
  const words = togetherWords();
  const place =
    pickup?.coils === 2 ? words[coil === 'a' ? 'screwCoilOf' : 'slugCoilOf'](owner) : owner;
  if (kind === 'pole') return { act: words.holdACompassOverCoilWhich(place), where: null };
  return {
    act: words[again ? 'pullOnceMore' : 'pullSteelOff'](place),
    where: pickup?.at === 'jack' ? words.letTheTitledPlayAloneKnobs(owner) : words.rOnItsHotLeadBOn,
  };
}

/** Whether they fight, in a sentence. */
export function phaseWords(sheet: Pick<TogetherSheet, 'pickups'>, pairs: readonly Pair[]): string {
  const fights = pairs.filter((pair) => pair.fights).map((pair) => pairWords(sheet, pair));
  if (pairs.length === 0) return togetherWords().tooLittleIsKnownToSay;
  if (fights.length > 0) return togetherWords().fightsOutOfPhase(capital(fights.join('; ')));
  return pairs.length === 1 ? togetherWords().theyAreInPhase : togetherWords().allOfThemAreInPhase;
}

export function pairWords(
  { pickups }: Pick<TogetherSheet, 'pickups'>,
  { first, second }: Pair,
): string {
  const titleOf = (id: string) => pickups.find((one) => one.id === id)?.title ?? id;
  return togetherWords().titleOfAndTitleOf2(titleOf(first), titleOf(second));
}
