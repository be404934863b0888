import type { Mark } from '../../closing/closing.ts';
import { pieceWords } from '../../words/en/pieces.ts';

const marks = {
  open: {
    get word() {
      return pieceWords().toDo;
    },
    path: 'M8.5 3 A5.5 5.5 0 1 0 8.51 3 Z',
    look: 'open',
  },
  fits: {
    get word() {
      return pieceWords().passed;
    },
    path: 'M3 9 L7 13 L14 4',
    look: 'fits',
  },
  again: {
    get word() {
      return pieceWords().onceMore;
    },
    path: 'M2 10 C5 4 7 4 8.5 8.5 S12 13 15 7',
    look: 'doubtful',
  },
  failed: {
    get word() {
      return pieceWords().off;
    },
    path: 'M4 4 L13 13 M13 4 L4 13',
    look: 'off',
  },
} as const;

/** Ring, tick, wave or cross with its word: the colour only repeats it. */
export function ItemMark({ mark, large = false }: { mark: Mark; large?: boolean }) {
  const { word, path, look } = marks[mark];
  return (
    <span class={`mark mark-${look}${large ? ' mark-large' : ''}`}>
      <svg viewBox="0 0 17 17" aria-hidden="true">
        <path d={path} />
      </svg>
      <span class={large ? 'unseen' : undefined}>{word}</span>
    </span>
  );
}
