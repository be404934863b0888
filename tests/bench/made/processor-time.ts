/** What `act` gives, and the milliseconds of processor time it took: on a busy machine the clock would count what others do. */
export function timed<T>(act: () => T): { readonly value: T; readonly ms: number } {
  const started = process.cpuUsage();
  const value = act();
  const { user, system } = process.cpuUsage(started);
  return { value, ms: (user + system) / 1000 };
}
