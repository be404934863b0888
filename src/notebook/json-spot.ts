/** Where a text stops being JSON (RFC 8259), counted from 1. Engines do not say it alike, or at all. */
export interface Spot {
  readonly line: number;
  readonly character: number;
}

/** One token; the groups tell a mark, a string and any other value apart. */
const TOKEN =
  /[ \t\n\r]*(?:([{}[\],:])|("(?:(?!["\\])(?:\P{Cc}|[\u007f-\u009f])|\\(?:["\\/bfnrt]|u[\da-fA-F]{4}))*")|(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)(?![\w.]))/uy;

type Wanted = 'value' | 'value or ]' | 'key' | 'key or }' | ':' | ', or end' | 'nothing';

/** The first place that no JSON text can have, or the end where something is missing. */
export function jsonSpot(text: string): Spot {
  const token = new RegExp(TOKEN);
  const open: ('{' | '[')[] = [];
  let wanted: Wanted = 'value';
  const closed = (): Wanted => (open.length > 0 ? ', or end' : 'nothing');
  for (let at = 0; ; at = token.lastIndex) {
    token.lastIndex = at;
    const found = token.exec(text);
    const next: Wanted | undefined = found ? after(found[1], found[2]) : undefined;
    if (next === undefined) return spotAt(text, at + /^[ \t\n\r]*/.exec(text.slice(at))![0].length);
    wanted = next;
  }

  /** What may follow this token, or nothing when it may not stand here. */
  function after(mark: string | undefined, string: string | undefined): Wanted | undefined {
    const value = wanted === 'value' || wanted === 'value or ]';
    if (string !== undefined && (wanted === 'key' || wanted === 'key or }')) return ':';
    if (mark === undefined) return value ? closed() : undefined;
    const top = open.at(-1);
    if (mark === '{' || mark === '[') {
      if (!value) return undefined;
      open.push(mark);
      return mark === '{' ? 'key or }' : 'value or ]';
    }
    if (mark === ':') return wanted === ':' ? 'value' : undefined;
    if (mark === ',') {
      if (wanted !== ', or end') return undefined;
      return top === '{' ? 'key' : 'value';
    }
    const ends = wanted === ', or end' || wanted === (mark === '}' ? 'key or }' : 'value or ]');
    if (!ends || top !== (mark === '}' ? '{' : '[')) return undefined;
    open.pop();
    return closed();
  }
}

function spotAt(text: string, at: number): Spot {
  const before = text.slice(0, at).split('\n');
  return { line: before.length, character: (before.at(-1)?.length ?? 0) + 1 };
}
