import type { Doubt } from '../../flows/index.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { BigKey } from '../entry/choices.tsx';
import type { Says } from '../hunt-actor.ts';
import { Screen } from '../pieces/screen.tsx';
import { seenWords } from '../words.ts';

interface DoubtfulProps {
  readonly strip?: preact.ComponentChildren;
  readonly doubt: Doubt;
  readonly say: Says<'TAKE_BETTER' | 'ENTERED_RIGHT' | 'BACK'>;
}

/** 5.9 typed for 5.9 k: asked, never assumed. */
export const Doubtful = ({ strip, doubt, say }: DoubtfulProps) => (
  <Screen name="doubtful" title={huntWords().lookAtTheDisplayAgain} strip={strip}>
    <p>{doubt.sentence}</p>
    <div class="choices choices-2">
      <BigKey
        says={seenWords(doubt.better)}
        note={huntWords().thisIsWhatItShows}
        onPress={() => say({ type: 'TAKE_BETTER' })}
      />
      <BigKey
        says={seenWords(doubt.entered)}
        note={huntWords().asITypedIt}
        onPress={() => say({ type: 'ENTERED_RIGHT' })}
      />
    </div>
    <p class="soft">{huntWords().lookForASmallKOrM}</p>
    <button type="button" class="plain" onClick={() => say({ type: 'BACK' })}>
      {huntWords().typeItAgain}
    </button>
  </Screen>
);
