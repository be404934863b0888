import { editorWords } from '../../words/en/editor.ts';
import { hrefOf } from '../route.ts';

interface DeskStripProps {
  readonly title: string;
  readonly unsaved: boolean;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  onTakeBack(what: 'undo' | 'redo'): void;
}

/** The way home, what is drawn, whether it is stored, and undo and redo. */
export function DeskStrip({ title, unsaved, canUndo, canRedo, onTakeBack }: DeskStripProps) {
  return (
    <header class="strip">
      <a class="strip-home" href={hrefOf({ at: 'home' })}>
        <span class="unseen">{editorWords().home}</span>
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M12 4 L6 10 L12 16" />
        </svg>
      </a>
      <span class="strip-job">
        <span class="strip-title">{title}</span>
        <span class="note">
          {unsaved ? editorWords().notStoredThisPageAloneHas : editorWords().storedAsYouDraw}
        </span>
      </span>
      <button type="button" class="quiet" disabled={!canUndo} onClick={() => onTakeBack('undo')}>
        {editorWords().undo}
      </button>
      <button type="button" class="quiet" disabled={!canRedo} onClick={() => onTakeBack('redo')}>
        {editorWords().redo}
      </button>
    </header>
  );
}
