import fc from 'fast-check';

/** Every path through a JSON value, to its leaves and to the objects on the way. */
function pathsOf(value: unknown, path: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return [path];
  return [path, ...Object.entries(value).flatMap(([key, one]) => pathsOf(one, [...path, key]))];
}

function withChange(
  raw: unknown,
  path: readonly string[],
  change: (old: unknown) => unknown,
): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return change(raw);
  const copy = (Array.isArray(raw) ? [...raw] : { ...(raw as object) }) as Record<string, unknown>;
  const value = withChange(copy[key], rest, change);
  if (value === undefined && !Array.isArray(copy)) delete copy[key];
  else copy[key] = value;
  return copy;
}

const change: fc.Arbitrary<(old: unknown) => unknown> = fc.oneof(
  fc.constant(() => undefined),
  fc.jsonValue({ maxDepth: 2 }).map((value) => () => value),
  fc
    .constantFrom('', 'jack.tip', 'hot@to', 'volume', '__proto__', 'open', 'ohms', 'NaN', '1')
    .map((value) => () => value),
  fc
    .constantFrom(0, -0, -1, 1, 10, 1e-9, 1e13, Number.MAX_VALUE, Number.MIN_VALUE)
    .map((value) => () => value),
  fc
    .constantFrom(1e-6, 1e-3, 0.5, 2, 1e3, 1e6)
    .map((factor) => (old: unknown) => (typeof old === 'number' ? old * factor : old)),
  fc.constant((old: unknown) => (typeof old === 'number' ? -old : [old])),
  fc.constant((old: unknown) => (Array.isArray(old) ? [...old, ...old] : { a: old })),
);

/** One of these values with one to three places replaced by something that may or may not belong there. */
export function damaged(whole: readonly unknown[], most = 3): fc.Arbitrary<unknown> {
  const places = whole.map((one) => ({ one, paths: pathsOf(one) }));
  return fc
    .record({
      which: fc.constantFrom(...places),
      changes: fc.array(fc.record({ at: fc.nat(), change }), { minLength: 1, maxLength: most }),
    })
    .map(({ which: { one, paths }, changes }) =>
      changes.reduce<unknown>((so, { at, change: act }) => {
        const path = paths[at % paths.length]!;
        // An earlier change may have taken this place away.
        return reaches(so, path) ? withChange(so, path, act) : so;
      }, one),
    );
}

const reaches = (raw: unknown, path: readonly string[]): boolean =>
  path.every((key, depth) => {
    const owner = path.slice(0, depth).reduce<unknown>((so, one) => (so as never)[one], raw);
    return typeof owner === 'object' && owner !== null && Object.hasOwn(owner, key);
  });

/** This text cut, doubled and overwritten. */
export const torn = (text: string): fc.Arbitrary<string> => {
  const spot = fc.nat(text.length);
  return fc
    .tuple(spot, spot, fc.string({ maxLength: 8 }))
    .map(([a, b, between]) => text.slice(0, a) + between + text.slice(b));
};

/** Any text at all, and any JSON. */
export const anyText: fc.Arbitrary<string> = fc.oneof(fc.string({ unit: 'binary' }), fc.json());
