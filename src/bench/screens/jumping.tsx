import type { Circuit } from '../../circuit/circuit.ts';
import { jointsNear } from '../../flows/index.ts';
import type { Ask } from '../../readings/reading.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { Screen } from '../pieces/screen.tsx';
import { siteWords } from '../words.ts';

interface JumpingProps {
  readonly strip: preact.ComponentChildren;
  readonly circuit: Circuit;
  readonly ask: Ask;
  readonly say: (
    said: { type: 'BACK' } | { type: 'JUMPS_AT'; site: string } | { type: 'CANNOT_REACH' },
  ) => void;
}

/** A reading that will not stand still: the tips first, then the wire that moves it. */
export function Jumping({ strip, circuit, ask, say }: JumpingProps) {
  const joints = jointsNear(circuit, ask);
  return (
    <Screen name="jumping" title={huntWords().itJumpsAbout} strip={strip}>
      <ol class="steps">
        <li>{huntWords().pressBothTipsHardOnBareMetal}</li>
        <li>{huntWords().waitUntilTheMeterSettlesIf}</li>
        <li>{huntWords().ifItStillJumpsNudgeOneWire}</li>
      </ol>
      <button type="button" class="main" onClick={() => say({ type: 'BACK' })}>
        {huntWords().itIsSteadyNow}
      </button>
      {joints.length > 0 && (
        <>
          <h2>{huntWords().itJumpsWhenIMove}</h2>
          <div class="list">
            {joints.map(({ site }) => (
              <button
                key={site}
                type="button"
                class="list-row"
                onClick={() => say({ type: 'JUMPS_AT', site })}
              >
                {siteWords(circuit, site)}
              </button>
            ))}
          </div>
        </>
      )}
      <button type="button" class="plain" onClick={() => say({ type: 'CANNOT_REACH' })}>
        {huntWords().iCannotGetASteadyReadingAsk}
      </button>
    </Screen>
  );
}
