import { effect } from '@preact/signals';
import { render } from 'preact';
import { speakIn } from '../words/speak.ts';
import { tongueFor } from '../words/tongue.ts';
import { App } from './app.tsx';
import { watchForInstall } from './install.ts';
import { nextTask } from './next-task.ts';
import { preferences } from './preferences.ts';
import { renderApart } from './render-apart.ts';
import { keepOffline, offlineState, updateWaiting } from './update.ts';

const place = document.getElementById('app');
if (!place) throw new Error('index.html has no element with the id "app" to draw the bench in.');

const tongue = tongueFor(preferences.value.language, navigator.languages);
document.documentElement.lang = tongue.language;
try {
  await speakIn(tongue);
} catch {
  // The messages could not be fetched: better English than nothing.
  document.documentElement.lang = 'en';
}
renderApart();
// The browser may offer it before anything is drawn.
watchForInstall();
// Running the scripts, reading preferences and drawing the first screen are each a task of their own.
await nextTask();
render(<App />, place);

// Said on the document too, where style sheets and the end-to-end tests can read it.
effect(() => {
  document.documentElement.dataset['offline'] = offlineState.value;
  document.documentElement.dataset['update'] = updateWaiting.value ? 'waiting' : 'none';
});
effect(() => {
  document.documentElement.dataset['light'] = preferences.value.light;
});
// A development server has no service worker to register.
if (import.meta.env.PROD) void nextTask().then(keepOffline);
