import { useEffect, useState } from 'preact/hooks';
import type { Sheet } from '../../notebook/index.ts';
import { called } from '../../words/called.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { usePorts } from '../ports.ts';
import { go, hrefOf } from '../route.ts';
import { Remove } from './remove.tsx';
import { SaveFile } from './save-file.tsx';
import { Screen } from './screen.tsx';

export type FoundSheet =
  | { readonly is: 'reading' }
  | { readonly is: 'found'; readonly sheet: Sheet }
  | { readonly is: 'missing'; readonly sentence: string };

/** A sheet from the notebook, for as long as no other tab removes it. */
export function useSheet(id: string | undefined): FoundSheet {
  const { notebook } = usePorts();
  const [found, setFound] = useState<FoundSheet>({ is: 'reading' });
  useEffect(() => {
    if (id === undefined) return;
    const unwatch = notebook.watch((notice) => {
      if (notice.id !== id || notice.what !== 'removed') return;
      setFound({ is: 'missing', sentence: pieceWords().itWasRemovedInAnotherTab });
    });
    notebook.sheets.read(id).then(
      (sheet) => setFound({ is: 'found', sheet }),
      (error: unknown) =>
        setFound({
          is: 'missing',
          sentence: error instanceof Error ? error.message : pieceWords().itCouldNotBeRead,
        }),
    );
    return unwatch;
  }, [id, notebook]);
  return found;
}

/** In the place of a sheet that is not there, or not yet. */
export const NoSheet = ({ found }: { found: Exclude<FoundSheet, { is: 'found' }> }) =>
  found.is === 'reading' ? (
    <Screen name="waiting" title={pieceWords().openingIt} />
  ) : (
    <Screen
      name="missing"
      title={pieceWords().thisCannotBeOpened}
      acts={
        <a class="main" href={hrefOf({ at: 'home' })}>
          {pieceWords().home}
        </a>
      }
    >
      <p role="alert">{found.sentence}</p>
    </Screen>
  );

/** Hands a sheet over as a file, and removes it. */
export function KeepSheet({ sheet }: { sheet: Sheet }) {
  const { notebook } = usePorts();
  return (
    <>
      <h2>{pieceWords().keepIt}</h2>
      <SaveFile job={sheet} />
      <Remove
        title={called(sheet.title)}
        onRemove={async (how) => {
          await notebook.sheets.remove(sheet.id, how);
          go({ at: 'home' });
        }}
      />
    </>
  );
}
