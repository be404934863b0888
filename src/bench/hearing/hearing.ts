import { type Signal, signal } from '@preact/signals';
import { voiceWords } from '../../words/en/voice.ts';
import type { EarNews, EarOrder } from './ear-worklet.ts';
import earWorklet from './ear-worklet.ts?worker&url';
import type { Mains } from './hum.ts';
import type { HumHeard } from './hum-ear.ts';
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
  /** `uneven` where the phone makes loud and soft alike by itself, so that levels say nothing. */
  | { readonly is: 'hearing hum'; readonly uneven: boolean }
  | { readonly is: 'failed'; readonly sentence: string };

export const hearing: Signal<Hearing> = signal({ is: 'off' });
/** How loud the room is, root mean square, full scale 1. */
export const roomLevel: Signal<number> = signal(0);
/** Whether the meter's tone sounds now. */
export const toneSounds: Signal<boolean> = signal(false);

/** Hum of the last second; null before there was one. */
export const humNow: Signal<HumHeard | null> = signal(null);

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

let onMeasured: (heard: HumHeard) => void = () => {};

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

/** Asks for the microphone, or the input of this name, and hears hum. */
export const listenForHum = (mains: Mains | null, input?: string): Promise<void> =>
  start({ do: 'hum', mains }, input);

/** Listens to one position from now on; calls back once, unless the microphone is let go of before. */
export function measureHum(measured: (heard: HumHeard) => void): void {
  onMeasured = measured;
  open?.node.port.postMessage('measure');
}

/** The inputs to choose from, once one was opened: a microphone, a line input. */
export async function inputs(): Promise<readonly MediaDeviceInfo[]> {
  const devices = await navigator.mediaDevices.enumerateDevices();
  return devices.filter(({ kind, label }) => kind === 'audioinput' && label !== '');
}

/** Lets go of the microphone. */
export function stopHearing(): void {
  order += 1;
  close();
  hearing.value = { is: 'off' };
}

async function start(what: EarOrder, input?: string): Promise<void> {
  order += 1;
  const own = order;
  close();
  hearing.value = { is: 'starting' };
  try {
    const opened = await openMicrophone(what, input);
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
  const { context, node, stream } = open;
  node.port.onmessage = ({ data }: MessageEvent<EarNews>) => take(data);
  const say = () => {
    if (context.state !== 'running') hearing.value = { is: 'waiting for a touch' };
    else if (what.do === 'learn') hearing.value = { is: 'learning' };
    else if (what.do === 'hum') hearing.value = { is: 'hearing hum', uneven: levels(stream) };
    else hearing.value = { is: 'listening', tone: what.tone };
  };
  context.onstatechange = say;
  say();
}

/** Whether the phone's own control of loudness stayed on, against what was asked. */
const levels = (stream: MediaStream): boolean =>
  stream.getAudioTracks().some((track) => track.getSettings().autoGainControl === true);

function take(news: EarNews): void {
  switch (news.is) {
    case 'level':
      roomLevel.value = news.rms;
      return;
    case 'learned':
      onLearned(news.tone);
      void listenFor(news.tone);
      return;
    case 'hum':
      humNow.value = news;
      if (news.measured) onMeasured(news);
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

async function openMicrophone(what: EarOrder, input?: string): Promise<Open> {
  // What a telephone does to speech would swallow a steady tone.
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: {
      echoCancellation: false,
      noiseSuppression: false,
      autoGainControl: false,
      ...(input !== undefined && { deviceId: { exact: input } }),
    },
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
  humNow.value = null;
  onMeasured = () => {};
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
