import { handWords } from '../../words/en/hands.ts';
import { install, installWay } from '../install.ts';
import { prefer, preferences } from '../preferences.ts';

/** After a finished hunt, once: how to have the app at hand next time. */
export function InstallHint() {
  const way = installWay();
  if (way === 'none' || preferences.value.toldToInstall) return null;
  const words = handWords();
  const done = () => prefer({ toldToInstall: true });
  return (
    <section class="install-hint">
      <h2>{words.atHand}</h2>
      <p>{way === 'ask' ? words.putItThere : words.putItThereByHand}</p>
      <p class="row">
        {way === 'ask' && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              done();
              void install();
            }}
          >
            {words.toHomeScreen}
          </button>
        )}
        <button type="button" class="quiet" onClick={done}>
          {way === 'ask' ? words.notNow : words.understood}
        </button>
      </p>
    </section>
  );
}
