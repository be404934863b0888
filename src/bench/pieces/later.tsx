import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { pieceWords } from '../../words/en/pieces.ts';
import { Screen } from './screen.tsx';

/** A screen whose code comes after the first one stands. `load` is asked again where it failed. */
export interface Later<Props> {
  readonly Screen: ComponentType<Props>;
  /** Fetches the code ahead of its use. */
  fetchAhead(): void;
}

type Loading<Props> =
  | { readonly is: 'loading' }
  | { readonly is: 'there'; readonly Loaded: ComponentType<Props> }
  | { readonly is: 'failed' };

export function later<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): Later<Props> {
  let kept: ComponentType<Props> | undefined;
  const get = async () => {
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
    fetchAhead: () => {
      // Where it fails, the screen itself asks again and says so.
      get().catch(() => undefined);
    },
  };
}
