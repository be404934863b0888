// Holds the arrows of src/ (see .dependency-cruiser.mjs). A checker that saw too little would pass in
// silence, so every source file on disk must have been seen, and every room of the house must exist.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import configuration, { rooms } from '../.dependency-cruiser.mjs';
import { root } from './folders.ts';

export interface ArchitectureReport {
  readonly modules: number;
  readonly arrows: number;
  /** One sentence for each thing that is wrong. */
  readonly faults: readonly string[];
}

/** @param folder a folder that holds a `src`, by its absolute path */
export async function checkArchitecture(folder: string): Promise<ArchitectureReport> {
  const { output } = await cruise(['src'], {
    ...configuration.options,
    baseDir: folder,
    ruleSet: { forbidden: configuration.forbidden },
    validate: true,
  });
  const { modules, summary } = output as ICruiseResult;
  const seen = new Set(modules.map(({ source }) => source).filter((it) => it.startsWith('src/')));
  const unseen = sourceFiles(folder).filter((file) => !seen.has(file));
  return {
    modules: seen.size,
    arrows: modules.reduce((sum, { dependencies }) => sum + dependencies.length, 0),
    faults: [
      ...summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`),
      ...unseen.map((file) => `not seen by the checker: ${file}`),
      ...sourceFiles(folder).flatMap((file) => tooLong(folder, file)),
      ...(seen.size === 0 ? ['the checker saw no module at all'] : []),
    ],
  };
}

/** One concept a file: above this length, its first comment says why. */
const longFile = 300;

function tooLong(folder: string, file: string): string[] {
  const text = readFileSync(join(folder, file), 'utf8');
  const lines = text.split('\n').length - 1;
  if (lines <= longFile || /^\/[/*]/.test(text)) return [];
  return [`${file} has ${lines} lines, more than ${longFile}, and no first comment that says why`];
}

/** Rooms of the house that have no folder. */
export function missingRooms(folder: string): string[] {
  return Object.keys(rooms).filter((room) => !existsSync(join(folder, 'src', room)));
}

function sourceFiles(folder: string): string[] {
  return readdirSync(join(folder, 'src'), { recursive: true, encoding: 'utf8' })
    .filter((file) => /(?<![.]d)[.]tsx?$/.test(file))
    .map((file) => `src/${file}`);
}

if (process.argv[1] === import.meta.filename) {
  const { modules, arrows, faults } = await checkArchitecture(root);
  const missing = missingRooms(root).map((room) => `no such room: src/${room}`);
  console.log(`${modules} modules, ${arrows} imports`);
  for (const fault of [...faults, ...missing]) console.error(fault);
  process.exitCode = faults.length + missing.length > 0 ? 1 : 0;
}
