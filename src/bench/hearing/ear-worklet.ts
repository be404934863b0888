// Runs on the audio thread, where a busy or dimmed screen cannot make it miss a beep. No sound leaves it:
// only the tone that it learned, when the tone begins or ends, how loud hum is, and how loud the room is.
import type { Mains } from './hum.ts';
import { type HumHeard, humEar } from './hum-ear.ts';
import { toneLearner } from './learn-tone.ts';
import type { Tone } from './tone.ts';
import { type ToneChange, toneEar } from './tone-ear.ts';

/** What an ear is made for: handed over as its `processorOptions`. */
export type EarOrder =
  | { readonly do: 'learn' }
  | { readonly do: 'listen'; readonly tone: Tone }
  /** Which mains, or null to find out. Any word to the port begins the measuring of one position. */
  | { readonly do: 'hum'; readonly mains: Mains | null };

/** What the ear tells the page; `at` on the clock of its AudioContext, seconds. */
export type EarNews =
  | { readonly is: 'learned'; readonly tone: Tone }
  | ({ readonly is: 'change' } & ToneChange)
  | ({ readonly is: 'hum' } & HumHeard)
  | { readonly is: 'level'; readonly rms: number };

// The compiler's library for pages does not know the audio thread.
declare const sampleRate: number;
declare const currentTime: number;
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
  constructor(options: { readonly processorOptions: unknown });
}
declare function registerProcessor(name: string, processor: typeof Ear): void;

/** Seconds between two words on how loud it is. */
const levelEvery = 0.1;

class Ear extends AudioWorkletProcessor {
  private hear: (block: Float32Array) => void;
  private sum = 0;
  private count = 0;

  constructor(options: { readonly processorOptions: EarOrder }) {
    super(options);
    const order = options.processorOptions;
    this.hear =
      order.do === 'learn'
        ? this.learning()
        : order.do === 'listen'
          ? this.listening(order.tone)
          : this.humming(order.mains);
  }

  private humming(mains: Mains | null): (block: Float32Array) => void {
    const ear = humEar(sampleRate, mains);
    this.port.onmessage = () => ear.measure();
    return (block) => {
      const heard = ear.push(block);
      if (heard) this.tell({ is: 'hum', ...heard });
    };
  }

  private learning(): (block: Float32Array) => void {
    const learner = toneLearner(sampleRate);
    return (block) => {
      const tone = learner(block);
      if (!tone) return;
      this.hear = () => {};
      this.tell({ is: 'learned', tone });
    };
  }

  private listening(tone: Tone): (block: Float32Array) => void {
    const ear = toneEar(tone, sampleRate);
    const from = currentTime;
    return (block) => {
      for (const { sounds, at } of ear(block)) this.tell({ is: 'change', sounds, at: from + at });
    };
  }

  private tell(news: EarNews): void {
    this.port.postMessage(news);
  }

  process([input]: readonly Float32Array[][]): boolean {
    const block = input?.[0];
    if (!block) return true;
    this.hear(block);
    for (const sample of block) this.sum += sample * sample;
    this.count += block.length;
    if (this.count >= levelEvery * sampleRate) {
      this.tell({ is: 'level', rms: Math.sqrt(this.sum / this.count) });
      this.sum = 0;
      this.count = 0;
    }
    return true;
  }
}

registerProcessor('ear', Ear);
