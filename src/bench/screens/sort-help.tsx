import type { ComponentChildren } from 'preact';
import type { Ask } from '../../readings/reading.ts';
import { matWords } from '../../words/en/mat.ts';
import { OpenFaces } from '../pieces/open-faces.tsx';
import { Screen } from '../pieces/screen.tsx';
import type { SortSay } from '../sort-actor.ts';

interface SortHelpProps {
  readonly strip: ComponentChildren;
  readonly kind: Ask['kind'];
  readonly say: SortSay;
}

const stepsFor = (kind: Ask['kind']): readonly string[] | undefined =>
  (matWords().steps as Partial<Record<Ask['kind'], readonly string[]>>)[kind];

/** How to take the reading that is asked. */
export function SortHelp({ strip, kind, say }: SortHelpProps) {
  return (
    <Screen
      name="sort-help"
      title={matWords().howToTakeThisReading}
      strip={strip}
      acts={
        <button type="button" class="main" onClick={() => say({ type: 'BACK' })}>
          {matWords().backToTheReading}
        </button>
      }
    >
      <ol class="steps">
        {stepsFor(kind)?.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {kind === 'ohms' && <OpenFaces />}
    </Screen>
  );
}
