import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { checkArchitecture, missingRooms } from '../../scripts/architecture.ts';

// The arrows are held by a tool that has been seen to pass over what it could not read. Each rule is
// shown a small house that breaks it.
describe('the architecture check', () => {
  let house: string;
  beforeEach(() => {
    house = mkdtempSync(join(tmpdir(), 'house-'));
  });
  afterEach(() => rmSync(house, { recursive: true }));

  const write = (files: Record<string, string>) => {
    for (const [file, text] of Object.entries(files)) {
      mkdirSync(dirname(join(house, file)), { recursive: true });
      writeFileSync(join(house, file), text);
    }
  };

  it('passes arrows that point down', async () => {
    write({
      'src/circuit/lug.ts': 'export type Lug = string;',
      'src/solver/ohms.ts': "import type { Lug } from '../circuit/lug.ts';\nexport type At = Lug;",
    });
    expect(await checkArchitecture(house)).toEqual({ modules: 2, arrows: 1, faults: [] });
  });

  it.each([
    [
      'a type import that points up',
      {
        'src/circuit/lug.ts': "import type { At } from '../solver/ohms.ts';\nexport type Lug = At;",
        'src/solver/ohms.ts': 'export type At = string;',
      },
      'circuit-imports-only-what-is-below: src/circuit/lug.ts -> src/solver/ohms.ts',
    ],
    [
      'a lazy import that points up',
      {
        'src/flows/hunt.ts': "export const later = () => import('../bench/screen.tsx');",
        'src/bench/screen.tsx': 'export const Screen = () => <p>Screen</p>;',
      },
      'flows-imports-only-what-is-below: src/flows/hunt.ts -> src/bench/screen.tsx',
    ],
    [
      'a solver that knows a part',
      {
        'src/circuit/parts/pot.ts': 'export const pot = 1;',
        'src/solver/ohms.ts':
          "import { pot } from '../circuit/parts/pot.ts';\nexport const x = pot;",
      },
      'solver-knows-no-guitar: src/solver/ohms.ts -> src/circuit/parts/pot.ts',
    ],
    [
      'a cycle',
      {
        'src/circuit/a.ts': "import { b } from './b.ts';\nexport const a = () => b;",
        'src/circuit/b.ts': "import { a } from './a.ts';\nexport const b = () => a;",
      },
      'no-cycles: src/circuit/a.ts -> src/circuit/b.ts',
    ],
    [
      'a file with no room',
      {
        'src/circuit/a.ts': "import { b } from '../helpers/b.ts';\nexport const a = b;",
        'src/helpers/b.ts': 'export const b = 1;',
      },
      'every-file-has-a-room: src/circuit/a.ts -> src/helpers/b.ts',
    ],
    [
      'an import that leads nowhere',
      { 'src/circuit/a.ts': "import { b } from './b.ts';\nexport const a = b;" },
      'imports-resolve: src/circuit/a.ts -> ./b.ts',
    ],
  ])('names %s', async (_what, files, fault) => {
    write(files);
    expect((await checkArchitecture(house)).faults).toContain(fault);
  });

  it('names a long file, unless its first comment says why', async () => {
    const long = `export const ohms = 1;${'\n'.repeat(301)}`;
    write({ 'src/circuit/long.ts': long, 'src/circuit/table.ts': `// A table.\n${long}` });
    expect((await checkArchitecture(house)).faults).toEqual([
      'src/circuit/long.ts has 301 lines, more than 300, and no first comment that says why',
    ]);
  });

  it('says when it saw nothing', async () => {
    write({ 'src/README.md': 'nothing here' });
    expect((await checkArchitecture(house)).faults).toEqual(['the checker saw no module at all']);
  });

  it('names rooms that are not there', () => {
    write({ 'src/circuit/lug.ts': '' });
    expect(missingRooms(house)).toContain('solver');
    expect(missingRooms(house)).not.toContain('circuit');
  });
});
