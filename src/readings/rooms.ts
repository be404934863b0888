/** The mean of what is heard over rooms that are equally likely. */
export function meanOf(rooms: readonly Readonly<Record<string, number>>[]): Record<string, number> {
  const words = Object.keys(rooms[0] ?? {});
  const mean = (word: string) =>
    rooms.reduce((sum, chances) => sum + (chances[word] as number), 0) / rooms.length;
  return Object.fromEntries(words.map((word) => [word, mean(word)]));
}
