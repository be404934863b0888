import { X509Certificate } from 'node:crypto';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { type ClientRequestArgs, get as getOverHttp, type IncomingMessage } from 'node:http';
import { get as getOverHttps } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { certificateFor } from '../../scripts/certificate.ts';
import { type StaticServer, startStaticServer } from '../../scripts/static-server.ts';

let folder: string;
let server: StaticServer | undefined;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'served-'));
  mkdirSync(join(folder, 'site/assets'), { recursive: true });
  writeFileSync(join(folder, 'site/index.html'), '<title>Home</title>');
  writeFileSync(join(folder, 'site/assets/app-1a2b.js'), 'export {};');
  writeFileSync(join(folder, 'private.txt'), 'not for the network');
});
afterEach(async () => {
  await server?.stop();
  server = undefined;
  rmSync(folder, { recursive: true });
});

/** A bare request: unlike fetch, it sends the path as it stands. */
function ask(path: string, options: ClientRequestArgs & { ca?: string } = {}) {
  return new Promise<{ status: number; headers: IncomingMessage['headers']; body: string }>(
    (resolve, reject) => {
      const get = options.ca ? getOverHttps : getOverHttp;
      get({ host: '127.0.0.1', port: server?.port, path, ...options }, async (answer) => {
        let body = '';
        for await (const chunk of answer) body += chunk;
        resolve({ status: answer.statusCode ?? 0, headers: answer.headers, body });
      }).on('error', reject);
    },
  );
}

const start = (basePath: string) =>
  startStaticServer({ folder: join(folder, 'site'), basePath, host: '127.0.0.1', port: 0 });

describe('the static server', () => {
  it('serves the folder under a sub-path, and leads there without the last slash', async () => {
    server = await start('/sub/');
    expect(await ask('/sub/')).toMatchObject({ status: 200, body: '<title>Home</title>' });
    expect((await ask('/sub')).headers.location).toBe('/sub/');
    expect((await ask('/')).status).toBe(404);
    expect((await ask('/sub/absent.js')).status).toBe(404);
  });

  it('lets a browser keep only the files whose name changes with their content', async () => {
    server = await start('/');
    expect((await ask('/index.html')).headers['cache-control']).toBe('no-cache');
    expect((await ask('/assets/app-1a2b.js')).headers).toMatchObject({
      'cache-control': 'public, max-age=31536000, immutable',
      'content-type': 'text/javascript; charset=utf-8',
    });
  });

  it.each([
    '/../private.txt',
    '/%2e%2e/private.txt',
    '/..%2fprivate.txt',
    '/assets/../../private.txt',
    '/%00',
    '/%zz',
    '//etc/passwd',
  ])('gives nothing from outside the folder for %s', async (path) => {
    server = await start('/');
    expect((await ask(path)).status).toBe(404);
  });

  it('refuses to change anything', async () => {
    server = await start('/');
    const answer = await fetch(`http://127.0.0.1:${server.port}/index.html`, { method: 'DELETE' });
    expect(answer.status).toBe(405);
  });

  it('refuses a base path without its slashes, by name', () => {
    expect(() => start('sub')).toThrow('The base path must begin and end with a slash; got "sub".');
  });
});

describe('the certificate for phones', () => {
  it('is accepted by a client that trusts its authority, for each address it names', async () => {
    const { key, cert, authorityFile } = certificateFor(['localhost', '127.0.0.1'], folder);
    server = await startStaticServer({
      folder: join(folder, 'site'),
      basePath: '/',
      host: '127.0.0.1',
      port: 0,
      certificate: { key, cert },
    });
    const ca = readFileSync(authorityFile, 'utf8');
    expect((await ask('/', { ca })).status).toBe(200);
    const leaf = new X509Certificate(cert);
    expect(leaf.ca).toBe(false);
    expect(leaf.checkHost('localhost')).toBe('localhost');
    expect(leaf.checkIP('192.168.1.20')).toBeUndefined();
  });

  it('leaves no key of the authority behind', () => {
    certificateFor(['localhost'], join(folder, 'kept'));
    expect(readdirSync(join(folder, 'kept')).sort()).toEqual([
      'public',
      'server.crt',
      'server.key',
    ]);
    expect(readdirSync(join(folder, 'kept/public'))).toEqual(['lugwise-authority.crt']);
  });

  it('is made once, and again when an address is new', () => {
    const first = certificateFor(['localhost'], folder);
    expect(first.isNew).toBe(true);
    expect(certificateFor(['localhost'], folder)).toEqual({ ...first, isNew: false });
    const second = certificateFor(['localhost', '10.0.0.7'], folder);
    expect(second.isNew).toBe(true);
    expect(new X509Certificate(second.cert).checkIP('10.0.0.7')).toBe('10.0.0.7');
  });
});
