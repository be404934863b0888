import { homeWords } from '../../words/en/home.ts';
import { Screen } from '../pieces/screen.tsx';
import { hrefOf } from '../route.ts';

/** A screen could not be drawn. What was entered stands on the disk already. */
export const Broken = ({ onAgain }: { onAgain(): void }) => (
  <Screen
    name="broken"
    title={homeWords().thisScreenCouldNotBeShown}
    acts={
      <>
        <a class="plain" href={hrefOf({ at: 'home' })} onClick={onAgain}>
          {homeWords().home}
        </a>
        <button type="button" class="main" onClick={() => window.location.reload()}>
          {homeWords().openTheAppAgain}
        </button>
      </>
    }
  >
    <p role="alert">{homeWords().itIsAFaultOfTheApp}</p>
  </Screen>
);
