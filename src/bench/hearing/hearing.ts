import { type Signal, signal } from '@preact/signals';
import { voiceWords } from '../../words/en/voice.ts';
import type { EarNews, EarOrder } from './ear-worklet.ts';
import earWorklet from './ear-worklet.ts?worker&url';
import type { Tone } from './tone.ts';
import type { ToneChange } from './tone-ear.ts';

/** What the microphone is doing. */
export type Hearing =
  | { readonly is: 'off' }
  | { readonly is: 'starting' }
  | { readonly is: 'learning' }
  /** The phone lets sound in only after a touch of the screen. */
  | { readonly is: 'waiting for a touch' }
  | { readonly is: 'listening'; readonly tone: Tone }
  | { readonly is: 'failed'; readonly sentence: string };

export const hearing: Signal<Hearing> = signal({ is: 'off' });
/** How loud the room is, root mean square, full scale 1. */
export const roomLevel: Signal<number> = signal(0);
/** Whether the meter's tone sounds now. */
export const toneSounds: Signal<boolean> = signal(false);

interface Open {
  readonly context: AudioContext;
  readonly stream: MediaStream;
  readonly node: AudioWorkletNode;
}
let open: Open | undefined;
/** Counts the orders, so that a start that was overtaken by a stop closes what it opened. */
let order = 0;

type ChangeListener = (change: ToneChange) => void;
const listeners = new Set<ChangeListener>();
type LearnListener = (tone: Tone) => void;
let onLearned: LearnListener = () => {};

/** Calls back when the meter's tone begins or ends. Returns how to stop. */
export function onTone(listener: ChangeListener): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** The clock on which tones begin and end, seconds. */
export const earClock = (): number => open?.context.currentTime ?? 0;

/** Asks for the microphone and learns the meter's tone while the probes touch. */
export async function learnTone(learned: LearnListener): Promise<void> {
  onLearned = learned;
  await start({ do: 'learn' });
}

/** Asks for the microphone and listens for this tone. */
export const listenFor = (tone: Tone): Promise<void> => start({ do: 'listen', tone });

/** Lets go of the microphone. */
export function stopHearing(): void {
  order += 1;
  close();
  hearing.value = { is: 'off' };
}

async function start(what: EarOrder): Promise<void> {
  order += 1;
  const own = order;
  close();
  hearing.value = { is: 'starting' };
  try {
    const opened = await openMicrophone(what);
    if (own !== order) {
      letGo(opened);
      return;
    }
    open = opened;
    obey(what);
  } catch (error) {
    if (own === order) hearing.value = { is: 'failed', sentence: refusalOf(error) };
  }
}

function obey(what: EarOrder): void {
  if (!open) return;
  const { context, node } = open;
  node.port.onmessage = ({ data }: MessageEvent<EarNews>) => take(data);
  const say = () => {
    if (context.state !== 'running') hearing.value = { is: 'waiting for a touch' };
    else if (what.do === 'learn') hearing.value = { is: 'learning' };
    else hearing.value = { is: 'listening', tone: what.tone };
  };
  context.onstatechange = say;
  say();
}

function take(news: EarNews): void {
  switch (news.is) {
    case 'level':
      roomLevel.value = news.rms;
      return;
    case 'learned':
      onLearned(news.tone);
      void listenFor(news.tone);
      return;
    case 'change':
      toneSounds.value = news.sounds;
      for (const listener of listeners) listener(news);
  }
}

/** A touch of the screen lets sound in again where the phone held it back. */
function resume(): void {
  if (open?.context.state === 'suspended') void open.context.resume();
}
document.addEventListener('pointerdown', resume);
document.addEventListener('keydown', resume);

async function openMicrophone(what: EarOrder): Promise<Open> {
  // What a telephone does to speech would swallow a steady tone.
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
  });
  const context = new AudioContext();
  try {
    await context.audioWorklet.addModule(earWorklet);
    const node = new AudioWorkletNode(context, 'ear', { processorOptions: what });
    context.createMediaStreamSource(stream).connect(node);
    // Silent: what is not on the way to a loudspeaker may never be run.
    node.connect(context.destination);
    return { stream, context, node };
  } catch (error) {
    for (const track of stream.getTracks()) track.stop();
    void context.close();
    throw error;
  }
}

function close(): void {
  if (!open) return;
  letGo(open);
  open = undefined;
  roomLevel.value = 0;
  toneSounds.value = false;
}

function letGo({ stream, context, node }: Open): void {
  for (const track of stream.getTracks()) track.stop();
  node.port.onmessage = null;
  context.onstatechange = null;
  void context.close();
}

function refusalOf(error: unknown): string {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'NotAllowedError') return voiceWords().thePhoneDoesNotLetThisApp;
  if (name === 'NotFoundError') return voiceWords().noMicrophoneWasFound;
  if (name === 'NotReadableError') return voiceWords().anotherAppHoldsTheMicrophone;
  if (!('mediaDevices' in navigator)) return voiceWords().theMicrophoneWorksOnlyOnA;
  return voiceWords().theMicrophoneCouldNotBeOpened;
}
