import type { Page } from '@playwright/test';

/**
 * Puts a stream in the microphone's place that plays what the test hands over: the browser's own fake
 * microphone plays one file in a loop, and a meter answers when it is asked.
 */
export async function microphone(page: Page): Promise<(wav: Buffer) => Promise<void>> {
  await page.addInitScript(() => {
    const made = (): { context: AudioContext; out: MediaStreamAudioDestinationNode } => {
      const context = new AudioContext();
      return { context, out: context.createMediaStreamDestination() };
    };
    let room: ReturnType<typeof made> | undefined;
    navigator.mediaDevices.getUserMedia = async () => {
      room ??= made();
      await room.context.resume();
      return room.out.stream.clone();
    };
    (window as unknown as { sound: (file: string) => Promise<void> }).sound = async (file) => {
      if (!room) throw new Error('Nobody listens.');
      const bytes = Uint8Array.from(atob(file), (letter) => letter.charCodeAt(0));
      const buffer = await room.context.decodeAudioData(bytes.buffer);
      const source = new AudioBufferSourceNode(room.context, { buffer });
      source.connect(room.out);
      source.start();
    };
  });
  return (wav) =>
    page.evaluate(
      (file) => (window as unknown as { sound: (file: string) => Promise<void> }).sound(file),
      wav.toString('base64'),
    );
}
