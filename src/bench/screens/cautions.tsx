import { huntWords } from '../../words/en/hunt.ts';
import { useGrowing } from '../growing.ts';
import type { Says } from '../hunt-actor.ts';
import { Screen } from '../pieces/screen.tsx';

/** Each caution with its reason. */
const cautions = () =>
  [
    [huntWords().unplugTheGuitarFromTheAmplifier, huntWords().useALooseCableOrABare],
    [huntWords().neverMeasureInsideAnAmplifier, huntWords().mainsAndStoredChargeCanKill],
    [huntWords().takeOutTheBattery, huntWords().ifTheGuitarHasOne],
    [huntWords().theIronBurnsItsFumesHarm, huntWords().openAWindowWearGlassesWhen],
    [huntWords().listenAtLowVolume, huntWords().aLooseJointCanBangLoudly],
    [huntWords().aReversedPickupWithAMetal, huntWords().makesThatMetalHotDoNotTouch],
  ] as const;
/** Cautions that come in the first frame. */
const FIRST = 3;

/** Before the first meter reading. */
export function Cautions({
  strip,
  say,
}: {
  strip: preact.ComponentChildren;
  say: Says<'CAUTIONS_READ'>;
}) {
  const whole = useGrowing(2) === 2;
  return (
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
        {cautions()
          .slice(0, whole ? undefined : FIRST)
          .map(([caution, reason]) => (
            <li key={caution}>
              <strong>{caution}</strong> {reason}
            </li>
          ))}
      </ul>
      {whole && <p class="soft">{huntWords().localCodesComeBeforeAnything}</p>}
    </Screen>
  );
}
