/** One text for plain data, whatever the order its keys were written in. */
export function canonical(data: unknown): string {
  return JSON.stringify(data, (_, value: unknown) =>
    value !== null && typeof value === 'object' && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
}
