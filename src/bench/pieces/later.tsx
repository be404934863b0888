import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { pieceWords } from '../../words/en/pieces.ts';
import { nextTask } from '../next-task.ts';
import { Screen } from './screen.tsx';

/** A screen whose code comes after the first one stands. `load` is asked again where it failed. */
export interface Later<Props> {
  readonly Screen: ComponentType<Props>;
  /** Fetches the code ahead of its use; done where it is there, and also where it cannot be fetched. */
  fetchAhead(): Promise<void>;
}

type Loading<Props> =
  | { readonly is: 'loading' }
  | { readonly is: 'there'; readonly Loaded: ComponentType<Props> }
  | { readonly is: 'failed' };

/** @param first what `load` needs and takes long to run: each of them runs in a task of its own before */
export function later<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  first: readonly (() => Promise<unknown>)[] = [],
): Later<Props> {
  let kept: ComponentType<Props> | undefined;
  const get = async () => {
    for (const one of kept ? [] : first) {
      await one();
      await nextTask();
    }
    kept ??= await load();
    return kept;
  };

  function LaterScreen(props: Props) {
    const [state, setState] = useState<Loading<Props>>(
      kept ? { is: 'there', Loaded: kept } : { is: 'loading' },
    );
    const fetchNow = () => {
      setState({ is: 'loading' });
      get().then(
        (Loaded) => setState({ is: 'there', Loaded }),
        () => setState({ is: 'failed' }),
      );
    };
    useEffect(() => {
      // Not `kept`: the code may have come since this screen was drawn without it.
      if (state.is !== 'there') fetchNow();
    }, []);
    if (state.is === 'there') return <state.Loaded {...props} />;
    if (state.is === 'loading') return <Screen name="waiting" title={pieceWords().oneMoment} />;
    return (
      <Screen
        name="missing"
        title={pieceWords().thisScreenIsNotOnThePhone}
        acts={
          <button type="button" class="main" onClick={fetchNow}>
            {pieceWords().tryAgain}
          </button>
        }
      >
        <p role="alert">{pieceWords().itCouldNotBeFetchedConnect}</p>
      </Screen>
    );
  }

  return {
    Screen: LaterScreen,
    // Where it fails, the screen itself asks again and says so.
    fetchAhead: () =>
      get().then(
        () => undefined,
        () => undefined,
      ),
  };
}
