import { useState } from 'preact/hooks';
import type { Verdict } from '../../diagnosis/assessment.ts';
import { huntWords } from '../../words/en/hunt.ts';
import type { Say } from '../hunt-actor.ts';
import { Screen } from '../pieces/screen.tsx';
import { Steps } from '../pieces/steps.tsx';
import { percent } from '../words.ts';

interface RepairingProps {
  readonly strip: preact.ComponentChildren;
  readonly verdict: Verdict;
  readonly say: Say;
}

/** What to do, step by step, and how to tell that it worked; where several repairs are named, one at a time. */
export function Repairing({ strip, verdict, say }: RepairingProps) {
  const [chosen, setChosen] = useState(0);
  const option = verdict.options[chosen];
  if (!option) return null;
  const several = verdict.options.length > 1;
  return (
    <Screen
      name="repairing"
      title={several ? huntWords().mendOneThenCheck : option.title}
      strip={strip}
      acts={
        <>
          <button type="button" class="plain" onClick={() => say({ type: 'BACK' })}>
            {huntWords().back}
          </button>
          <button
            type="button"
            class="main"
            onClick={() => say({ type: 'REPAIRED', repair: option.repair, title: option.title })}
          >
            {huntWords().iDidIt}
          </button>
        </>
      }
    >
      {several && (
        <fieldset class="options">
          <legend>{huntWords().whichOneDoYouMend}</legend>
          {verdict.options.map(({ repair, title, probability }, index) => (
            <label key={repair}>
              <input
                type="radio"
                name="repair"
                checked={index === chosen}
                onChange={() => setChosen(index)}
              />
              <span class="option-title">{title}</span>
              <span class="suspect-share">{percent(probability)}</span>
            </label>
          ))}
        </fieldset>
      )}
      {several && <p>{huntWords().forThisFaultSentence(option.sentence)}</p>}
      <Steps steps={option.steps} />
      {option.proof && (
        <>
          <h2>{huntWords().itWorkedIf}</h2>
          <p>{option.proof}</p>
        </>
      )}
      <p class="caution">{huntWords().theIronBurnsAndItsFumesHarm}</p>
    </Screen>
  );
}
