import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { dist } from '../../scripts/folders.ts';
import type { Tone } from '../../src/bench/hearing/tone.ts';
import type { ToneChange } from '../../src/bench/hearing/tone-ear.ts';
import { sampleRate, wavOf } from './sounds.ts';
import { learning } from './trials.ts';

const worklet = (): string => {
  const file = readdirSync(join(dist, 'assets')).find((name) => name.startsWith('ear-worklet'));
  if (!file) throw new Error('The build holds no ear.');
  return `./assets/${file}`;
};

export interface Heard {
  readonly tone: Tone | null;
  readonly changes: readonly ToneChange[];
}

/** Runs the app's own ear in this browser over a sound file, faster than it would sound. */
export async function hearIn(page: Page, sound: Float32Array): Promise<Heard> {
  const wav = wavOf(sound).toString('base64');
  return page.evaluate(
    async ([url, file, rate, learns]) => {
      const bytes = Uint8Array.from(atob(file), (letter) => letter.charCodeAt(0));
      const data = await new OfflineAudioContext(1, 1, rate).decodeAudioData(bytes.buffer);
      const run = async (order: unknown, seconds: number) => {
        const context = new OfflineAudioContext(1, Math.round(seconds * rate), rate);
        await context.audioWorklet.addModule(url);
        const ear = new AudioWorkletNode(context, 'ear', { processorOptions: order });
        const news: { is: string; tone?: unknown; sounds?: boolean; at?: number }[] = [];
        ear.port.onmessage = ({ data: one }) => news.push(one);
        const source = new AudioBufferSourceNode(context, { buffer: data });
        source.connect(ear).connect(context.destination);
        source.start();
        await context.startRendering();
        // What was sent last is still on its way.
        await new Promise((resolve) => setTimeout(resolve, 200));
        return news;
      };
      const learned = (await run({ do: 'learn' }, learns)).find(({ is }) => is === 'learned');
      if (!learned) return { tone: null, changes: [] };
      const heard = await run({ do: 'listen', tone: learned.tone }, data.duration);
      return { tone: learned.tone, changes: heard.filter(({ is }) => is === 'change') };
    },
    [worklet(), wav, sampleRate, learning] as const,
  ) as Promise<Heard>;
}
