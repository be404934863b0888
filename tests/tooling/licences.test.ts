import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/folders.ts';
import {
  isPermissive,
  type Lock,
  licenceDocument,
  licenceTexts,
  licensedPackages,
  readLock,
} from '../../scripts/licences.ts';

const packages = licensedPackages(readLock());
const onPhone = packages.filter((one) => one.onPhone);
const own = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
};

describe('the licences of what is used', () => {
  it('are listed in the docs as the lockfile has them', () => {
    expect(readFileSync(join(root, 'docs/licences.md'), 'utf8')).toBe(licenceDocument(packages));
  });

  it('are permissive for everything that ends on the phone', () => {
    expect(onPhone.filter(({ licence }) => !isPermissive(licence))).toEqual([]);
  });

  it('count every package that the app asks for as on the phone, and the parts of the service worker', () => {
    const names = onPhone.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(Object.keys(own.dependencies)));
    expect(names).toContain('workbox-precaching');
    for (const name of Object.keys(own.devDependencies)) expect(names).not.toContain(name);
  });

  it('are the ones that the installed packages name themselves', () => {
    for (const { name, version, licence } of onPhone) {
      const installed = JSON.parse(
        readFileSync(join(root, 'node_modules', name, 'package.json'), 'utf8'),
      ) as { readonly version: string; readonly license: string };
      expect([name, installed.version, installed.license]).toEqual([name, version, licence]);
    }
  });

  it('go with the built app, each with its text', () => {
    const texts = licenceTexts(packages);
    for (const { name, version, licence } of onPhone)
      expect(texts).toContain(`${name} ${version} (${licence})`);
    expect(texts.match(/permission is hereby granted|permission to use|apache license/gi)?.length)
      // Two packages bring no text of their own.
      .toBeGreaterThanOrEqual(onPhone.length - 2);
  });

  it('would notice one that asks for more, and one that has none', () => {
    expect(isPermissive('(MIT OR GPL-3.0-only)')).toBe(true);
    expect(isPermissive('Apache-2.0 AND MIT')).toBe(true);
    expect(isPermissive('MIT AND MPL-2.0')).toBe(false);
    expect(isPermissive('GPL-3.0-only')).toBe(false);
    const lock: Lock = { packages: { '': {}, 'node_modules/nameless': { version: '1.0.0' } } };
    expect(() => licensedPackages(lock)).toThrow(
      'node_modules/nameless has no version or no licence',
    );
  });

  it('take a package that is there both for tests and for the app as on the phone', () => {
    const one = { version: '1.0.0', license: 'MIT' };
    const lock: Lock = {
      packages: {
        'node_modules/a/node_modules/both': { ...one, dev: true },
        'node_modules/both': one,
        'node_modules/zz/node_modules/both': { ...one, dev: true },
      },
    };
    expect(licensedPackages(lock)).toEqual([
      { name: 'both', version: '1.0.0', licence: 'MIT', onPhone: true },
    ]);
  });
});
