import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { dropHalfTold, keepHalfTold, readHalfTold } from './half-told.ts';

const KEY = 'lugwise-half-told';

/** Web Storage as the HTML standard has it: text by name. */
function storage(): Storage & { readonly held: Map<string, string> } {
  const held = new Map<string, string>();
  return {
    held,
    getItem: (name: string) => held.get(name) ?? null,
    setItem: (name: string, text: string) => void held.set(name, text),
    removeItem: (name: string) => void held.delete(name),
  } as unknown as Storage & { readonly held: Map<string, string> };
}

let kept: ReturnType<typeof storage>;
beforeEach(() => {
  kept = storage();
  vi.stubGlobal('localStorage', kept);
});
afterEach(() => vi.unstubAllGlobals());

describe('what is being told on a screen', () => {
  it('is there again until it is dropped, each place by itself', () => {
    keepHalfTold('heard/a', ['silent']);
    keepHalfTold('leads', { coils: 2 });
    keepHalfTold('heard/a', ['silent', 'normal']);
    expect(readHalfTold('heard/a')).toEqual(['silent', 'normal']);
    expect(readHalfTold('leads')).toEqual({ coils: 2 });
    dropHalfTold('heard/a');
    expect(readHalfTold('heard/a')).toBeUndefined();
    expect(readHalfTold('leads')).toEqual({ coils: 2 });
    dropHalfTold('leads');
    expect(kept.held.size).toBe(0);
  });

  it('keeps the newest twelve places', () => {
    for (let at = 0; at < 20; at += 1) keepHalfTold(`heard/${at}`, at);
    // Told again: it is the newest.
    keepHalfTold('heard/8', 'again');
    keepHalfTold('leads', true);
    const places = Object.keys(JSON.parse(kept.held.get(KEY) ?? '{}'));
    expect(places).toHaveLength(12);
    expect(places.slice(-2)).toEqual(['heard/8', 'leads']);
    expect(readHalfTold('heard/9')).toBeUndefined();
  });

  it('holds nothing that is damaged, too long or refused by the browser, and goes on', () => {
    for (const damaged of ['{', '[1]', 'null', '7']) {
      kept.held.set(KEY, damaged);
      expect(readHalfTold('leads')).toBeUndefined();
      keepHalfTold('leads', damaged);
      expect(readHalfTold('leads')).toBe(damaged);
    }
    keepHalfTold('leads', 'x'.repeat(60_000));
    expect(readHalfTold('leads')).toBe('7');
    vi.stubGlobal('localStorage', undefined);
    keepHalfTold('leads', 1);
    expect(readHalfTold('leads')).toBeUndefined();
    dropHalfTold('leads');
  });
});
