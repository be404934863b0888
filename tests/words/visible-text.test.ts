import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { notShown, stillToMove } from './still-to-move.ts';
import { visibleText } from './visible-text.ts';

const root = new URL('../..', import.meta.url).pathname;
const files = globSync('src/**/*.{ts,tsx}', { cwd: root }).filter(
  (file) => !/\.(test|fixture)\.tsx?$|^src\/words\//.test(file),
);
const found = new Map(
  files.map((file) => [
    file,
    notShown.some(({ path }) => file.startsWith(path))
      ? []
      : visibleText(file, readFileSync(`${root}${file}`, 'utf8')),
  ]),
);

describe('text that a person sees', () => {
  it.each(files.filter((file) => !stillToMove.includes(file)))(
    'stands in the catalogue, not in %s',
    (file) => expect(found.get(file)).toEqual([]),
  );

  it('has left every file that the list of those to do no longer needs', () => {
    expect(stillToMove.filter((file) => found.get(file)?.length === 0)).toEqual([]);
    expect(stillToMove.filter((file) => !found.has(file))).toEqual([]);
  });
});

describe('the search for such text', () => {
  const texts = (code: string) => visibleText('x.tsx', code).map(({ text }) => text);

  it.each([
    ['text of markup', '<p>Turn it {n} times.</p>', ['Turn it', 'times.']],
    ['an attribute that is read out', '<svg aria-label="wiring" class="a b" />', ['wiring']],
    ['a sentence', 'const a = "Nothing is lost.";', ['Nothing is lost.']],
    ['a template', `const a = \`lug 3 of the \${part}\`;`, ['lug 3 of the {}']],
    ['a word with a capital', 'const a = { light: "Bright" };', ['Bright']],
  ])('finds %s', (_, code, expected) => expect(texts(code)).toEqual(expected));

  it.each([
    ['a name', 'const a = "not-ruled-out";'],
    ['a class', '<p class="row wide" />'],
    ['what is compared', 'if (key === "Enter it") go();'],
    ['a promise between programmers', 'throw new RangeError("expected a number");'],
    ['an address', 'import a from "some file";'],
  ])('passes over %s', (_, code) => expect(texts(code)).toEqual([]));
});
