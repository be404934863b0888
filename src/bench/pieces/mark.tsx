import type { ReadingReport } from '../../diagnosis/assessment.ts';
import { pieceWords } from '../../words/en/pieces.ts';

const marks = {
  fits: {
    get word() {
      return pieceWords().fits;
    },
    path: 'M3 9 L7 13 L14 4',
  },
  off: {
    get word() {
      return pieceWords().doesNotFit;
    },
    path: 'M4 4 L13 13 M13 4 L4 13',
  },
  doubtful: {
    get word() {
      return pieceWords().inDoubt;
    },
    path: 'M2 10 C5 4 7 4 8.5 8.5 S12 13 15 7',
  },
} as const;

/** Tick, cross or wave with its word: the colour only repeats it. */
export function Mark({ fits, short = false }: { fits: ReadingReport['fits']; short?: boolean }) {
  const { word, path } = marks[fits];
  return (
    <span class={`mark mark-${fits}`}>
      <svg viewBox="0 0 17 17" aria-hidden="true">
        <path d={path} />
      </svg>
      <span class={short ? 'unseen' : undefined}>{word}</span>
    </span>
  );
}
