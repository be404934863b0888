// What the phone must load and run before the first screen stands: every script that index.html names
// and all that those import. Lazily loaded parts and the engine's worker come after.
import { readdirSync, readFileSync } from 'node:fs';

const page = readFileSync('dist/index.html', 'utf8');
const named = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(
  ([, file]) => `dist/${file}`,
);
if (named.length === 0)
  throw new Error('dist/index.html names no script: nothing would be measured.');
const first = withImports(named);
const later = readdirSync('dist/assets')
  .filter((file) => file.endsWith('.js'))
  .map((file) => `dist/assets/${file}`)
  .filter((file) => !first.includes(file));

export default [
  { name: 'first load, script', path: first, gzip: true, limit: '60 kB' },
  ...later.map((file) => ({ name: `later: ${file.slice(12)}`, path: file, gzip: true })),
];

/** @param {string[]} files scripts, and in the answer also those that they import at once */
function withImports(files) {
  const all = new Set(files);
  for (const file of all) {
    const code = readFileSync(file, 'utf8');
    for (const [, imported] of code.matchAll(
      /(?:\bfrom|^import|[;}]import)\s*["']\.\/([^"']+\.js)["']/g,
    )) {
      all.add(`dist/assets/${imported}`);
    }
  }
  return [...all];
}
