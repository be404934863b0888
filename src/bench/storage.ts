import { signal } from '@preact/signals';
import { keepingWords } from '../words/en/keeping.ts';
import { fixed } from '../words/figures.ts';

/** What the browser says of its storage; null where it does not tell. */
export interface Room {
  /** Whether it promised not to clear it by itself. */
  readonly kept: boolean | null;
  /** Bytes that Lugwise uses, and that are left to it. */
  readonly used: number | null;
  readonly left: number | null;
}

export const room = signal<Room | null>(null);

export async function lookAtRoom(): Promise<void> {
  const { storage } = navigator;
  const kept = (await storage?.persisted?.().catch(() => null)) ?? null;
  const { usage, quota } = (await storage?.estimate?.().catch(() => null)) ?? {};
  room.value = {
    kept,
    used: usage ?? null,
    left: usage === undefined || quota === undefined ? null : Math.max(0, quota - usage),
  };
}

/** Asks the browser to keep what is stored, also when the phone runs out of room. */
export async function askToKeep(): Promise<void> {
  await navigator.storage?.persist?.().catch(() => false);
  await lookAtRoom();
}

/** "1.2 MB". */
export function size(bytes: number): string {
  const { kilobytes, megabytes, gigabytes } = keepingWords();
  if (bytes < 1e6) return kilobytes(Math.round(bytes / 1e3));
  return bytes < 1e9 ? megabytes(fixed(bytes / 1e6, 1)) : gigabytes(fixed(bytes / 1e9, 1));
}
