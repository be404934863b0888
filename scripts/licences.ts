// `npm run -s licences` writes docs/licences.md anew from package-lock.json. The build takes the texts of what ends on the phone from here.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './folders.ts';

export interface LicensedPackage {
  readonly name: string;
  readonly version: string;
  /** An SPDX licence expression. */
  readonly licence: string;
  /** Whether code of it ends on the phone. */
  readonly onPhone: boolean;
}

/** What package-lock.json (version 3) says of a package; the key of each is its folder. */
export interface Lock {
  readonly packages: Readonly<
    Record<
      string,
      {
        readonly version?: string;
        readonly license?: string;
        readonly dev?: boolean;
        readonly optional?: boolean;
        readonly devOptional?: boolean;
      }
    >
  >;
}

/** Only workbox-build is asked for, but it writes these into the service worker, so they end on the phone as well. */
const IN_SERVICE_WORKER = [
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
  'workbox-strategies',
];

/** Licences of the SPDX list that ask for nothing but that notice and text are kept, from their own texts. */
const PERMISSIVE = new Set([
  ...['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'BlueOak-1.0.0'],
  ...['CC0-1.0', 'Unlicense', 'Zlib'],
]);

/** Whether one way of taking an SPDX expression (SPDX specification, annex "SPDX license expressions") is permissive throughout. */
export const isPermissive = (expression: string): boolean =>
  expression
    .replace(/^\((.*)\)$/, '$1')
    .split(' OR ')
    .some((way) => way.split(' AND ').every((one) => PERMISSIVE.has(one)));

const folderName = (path: string): string => path.slice(path.lastIndexOf('node_modules/') + 13);

/** Every package of the lockfile once a version, by name. Throws an Error that names a package without a licence. */
export function licensedPackages({ packages }: Lock): LicensedPackage[] {
  const found = new Map<string, LicensedPackage>();
  for (const [path, { version, license, dev, optional, devOptional }] of Object.entries(packages)) {
    if (path === '') continue;
    const name = folderName(path);
    if (!version || !license)
      throw new Error(`${path} has no version or no licence in the lockfile.`);
    const onPhone = IN_SERVICE_WORKER.includes(name) || !(dev || optional || devOptional);
    const key = `${name} ${version}`;
    found.set(key, {
      name,
      version,
      licence: license,
      onPhone: onPhone || !!found.get(key)?.onPhone,
    });
  }
  return [...found.values()].sort(
    (a, b) => compare(a.name, b.name) || compare(a.version, b.version),
  );
}

/** By code unit, so that every machine gets the same order. */
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

export const readLock = (): Lock =>
  JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as Lock;

/** docs/licences.md. */
export function licenceDocument(packages: readonly LicensedPackage[]): string {
  const [phone, tools] = [true, false].map((on) => packages.filter((one) => one.onPhone === on));
  const kinds = [...new Set(tools!.map(({ licence }) => licence))].sort(compare);
  return `# Licences

Printed by \`npm run -s licences\` from \`package-lock.json\`; a test holds this list to the lockfile.

## On the phone

${phone!.length} packages whose code is built into the app, its engine or its service worker; the smallest
parts of one may be all that is taken. Each is under a permissive licence. Their texts are in \`licences.txt\`
of the built app, which is kept offline with the rest.

| package | version | licence (SPDX) |
| --- | --- | --- |
${phone!.map(({ name, version, licence }) => `| ${name} | ${version} | ${licence} |`).join('\n')}

## For building and testing alone

${tools!.length} packages, none of which ends on the phone, by licence.

${kinds
  .map((kind) => {
    const under = tools!.filter(({ licence }) => licence === kind);
    return `### ${kind} (${under.length})\n\n${under.map(({ name, version }) => `${name} ${version}`).join(', ')}`;
  })
  .join('\n\n')}

Debian's \`chromium\`, \`ngspice\` and \`openssl\` are run as programs by the tests and the local server, and are no part of Lugwise.
`;
}

/** The licences of all that ends on the phone, each with its text as its package brings it. */
export function licenceTexts(packages: readonly LicensedPackage[]): string {
  return packages
    .filter(({ onPhone }) => onPhone)
    .map(({ name, version, licence }) => {
      const folder = join(root, 'node_modules', name);
      const files = readdirSync(folder).filter((file) => /^licen[cs]e/i.test(file));
      const texts = files.map((file) => readFileSync(join(folder, file), 'utf8').trim());
      if (files.length === 0)
        texts.push(
          `The package brings no text. It is that of https://spdx.org/licenses/${licence}.html`,
        );
      return `${name} ${version} (${licence})\n\n${texts.join('\n\n')}\n`;
    })
    .join(`\n${'-'.repeat(72)}\n\n`);
}

if (process.argv[1] === import.meta.filename) {
  const file = join(root, 'docs', 'licences.md');
  writeFileSync(file, licenceDocument(licensedPackages(readLock())));
  process.stdout.write(`${file}\n`);
}
