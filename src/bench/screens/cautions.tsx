import { huntWords } from '../../words/en/hunt.ts';
import type { Says } from '../hunt-actor.ts';
import { Screen } from '../pieces/screen.tsx';

/** Before the first meter reading. */
export const Cautions = ({
  strip,
  say,
}: {
  strip: preact.ComponentChildren;
  say: Says<'CAUTIONS_READ'>;
}) => (
  <Screen
    name="cautions"
    title={huntWords().beforeYouMeasure}
    strip={strip}
    acts={
      <button type="button" class="main" onClick={() => say({ type: 'CAUTIONS_READ' })}>
        {huntWords().theGuitarIsUnplugged}
      </button>
    }
  >
    <ul class="cautions">
      <li>
        <strong>{huntWords().unplugTheGuitarFromTheAmplifier}</strong>{' '}
        {huntWords().useALooseCableOrABare}
      </li>
      <li>
        <strong>{huntWords().neverMeasureInsideAnAmplifier}</strong>{' '}
        {huntWords().mainsAndStoredChargeCanKill}
      </li>
      <li>
        <strong>{huntWords().takeOutTheBattery}</strong> {huntWords().ifTheGuitarHasOne}
      </li>
      <li>
        <strong>{huntWords().theIronBurnsItsFumesHarm}</strong>{' '}
        {huntWords().openAWindowWearGlassesWhen}
      </li>
      <li>
        <strong>{huntWords().listenAtLowVolume}</strong> {huntWords().aLooseJointCanBangLoudly}
      </li>
      <li>
        <strong>{huntWords().aReversedPickupWithAMetal}</strong>{' '}
        {huntWords().makesThatMetalHotDoNotTouch}
      </li>
    </ul>
    <p class="soft">{huntWords().localCodesComeBeforeAnything}</p>
  </Screen>
);
