// `npm run hearing -- [--seed TEXT] [--count N]`: what the built app's ear makes of a meter's beep in a real
// browser fed with sound files, as a table in docs/hearing.md. Build first.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { chromium, type Page } from 'playwright';
import { browserLaunch } from '../tests/e2e/browser.ts';
import { hearIn } from '../tests/hearing/in-browser.ts';
import { addTone, levelled, sampleRate } from '../tests/hearing/sounds.ts';
import {
  conditions,
  judge,
  learning,
  type Surroundings,
  streamOf,
  surroundingsOf,
} from '../tests/hearing/trials.ts';
import { Dice } from '../tests/simulated/dice.ts';
import { dist, root } from './folders.ts';
import { startStaticServer } from './static-server.ts';

const { values } = parseArgs({
  options: { seed: { type: 'string', default: '1' }, count: { type: 'string', default: '50' } },
});
const count = Number(values.count);

const server = await startStaticServer({ folder: dist, basePath: '/', host: '127.0.0.1', port: 0 });
const browser = await chromium.launch(browserLaunch);
const page = await browser.newPage();
await page.goto(`http://localhost:${server.port}/`);

const rows = ['| around | dB | beep, s | asked | right | missed | false |'];
rows.push('| --- | --- | --- | --- | --- | --- | --- |');
for (const condition of conditions) {
  const stream = streamOf(condition, values.seed, count);
  const { changes } = await hearIn(page, stream.sound);
  const { asked, right, missed, false: wrong } = judge(stream, changes);
  const { surroundings, decibels, beep } = condition;
  rows.push(`| ${[surroundings, decibels, beep, asked, right, missed, wrong].join(' | ')} |`);
}

const minutes = ['| around, as loud as the meter | minutes | beeps heard |', '| --- | --- | --- |'];
for (const [surroundings, length] of [
  ['speech-shaped noise', 10],
  ['noise that rises and falls', 10],
  ['music', 10],
  ['clicks', 10],
] as const)
  minutes.push(`| ${surroundings} | ${length} | ${await falseBeeps(page, surroundings, length)} |`);

await browser.close();
await server.stop();

const report = `# How well the phone hears a meter

Printed by \`npm run hearing -- --seed ${values.seed} --count ${count}\`: the app's own ear, in a real browser, fed with sound files. Tones of 1.8 to 4.5 kHz, sine or square, learned in the first second and a half; then ${count} questions of two seconds each, half of them with a beep. "dB" is the power of the tone over the power of everything else, over the whole band. Speech-shaped noise has the spectrum of ANSI S3.5-1997 (values from memory); music is made of chords, a tune up to 1975 Hz and a drum.

${rows.join('\n')}

And where no meter beeps:

${minutes.join('\n')}
`;
writeFileSync(join(root, 'docs', 'hearing.md'), report);
console.log(report);

/** Beeps that the ear reports in so many minutes without one, by pieces of one minute and six tones in turn. */
async function falseBeeps(on: Page, surroundings: Surroundings, length: number): Promise<number> {
  let heard = 0;
  for (let minute = 0; minute < length; minute++) {
    const dice = new Dice(`${values.seed} none ${surroundings} ${minute}`);
    const hertz = dice.between(1800, 4500);
    const around = levelled(surroundingsOf(surroundings, 60, dice), 0.1);
    const start = Math.round((learning + 0.5) * sampleRate);
    const sound = new Float32Array(start + around.length);
    sound.set(around, start);
    addTone(sound, { from: 0, seconds: learning, hertz, rms: 0.1, square: false });
    const { changes } = await hearIn(on, sound);
    heard += changes.filter(({ sounds, at }) => sounds && at > learning + 0.5).length;
  }
  return heard;
}
