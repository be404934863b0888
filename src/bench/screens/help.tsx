import type { Ask } from '../../readings/reading.ts';
import { handWords } from '../../words/en/hands.ts';
import { KindDrawing } from '../drawings/kind-drawing.tsx';
import { OpenFaces } from '../pieces/open-faces.tsx';
import { Screen } from '../pieces/screen.tsx';

interface HelpProps {
  readonly strip: preact.ComponentChildren;
  readonly kind: Ask['kind'];
  /** Back to the reading, in whatever flow asked for it. */
  readonly say: (event: { readonly type: 'BACK' }) => void;
}

/** Kinds for which both tips are held. */
const withTips: ReadonlySet<Ask['kind']> = new Set([
  'ohms',
  'turn',
  'beep',
  'flex',
  'tap',
  'farads',
]);

/** What the reading that is asked is, how it is taken and what it tells; for a number also what open looks like. */
export function Help({ strip, kind, say }: HelpProps) {
  const words = handWords();
  const { title, drawn, what, how, tells } = words.explained[kind];
  const number = kind === 'ohms' || kind === 'turn';
  return (
    <Screen
      name="help"
      title={title}
      strip={strip}
      acts={
        <button type="button" class="main" onClick={() => say({ type: 'BACK' })}>
          {words.backToTheReading}
        </button>
      }
    >
      <KindDrawing kind={kind} words={drawn} />
      <p>{what}</p>
      <h2>{words.howToTakeIt}</h2>
      <p>{how}</p>
      {withTips.has(kind) && <p>{words.fingers}</p>}
      {number && (
        <>
          <h2>{words.whatIsOl}</h2>
          <OpenFaces />
        </>
      )}
      <h2>{words.whatItTells}</h2>
      <p>{tells}</p>
    </Screen>
  );
}
