export interface Notice {
  readonly id: string;
  /** Of photos the `id` is that of their job. */
  readonly what: 'written' | 'removed' | 'photos';
}

/** Word between the tabs of one device. A tab does not hear itself. */
export interface Notices {
  tell(notice: Notice): void;
  watch(listener: (notice: Notice) => void): () => void;
  close(): void;
}

export function openNotices(): Notices {
  const channel =
    typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('lugwise-jobs');
  const listeners = new Set<(notice: Notice) => void>();
  if (channel)
    channel.onmessage = (event: MessageEvent<Notice>) => {
      for (const listener of listeners) listener(event.data);
    };
  return {
    tell: (notice) => channel?.postMessage(notice),
    watch(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close() {
      listeners.clear();
      channel?.close();
    },
  };
}
