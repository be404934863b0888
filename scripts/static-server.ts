import { createReadStream, statSync } from 'node:fs';
import {
  createServer as createHttpServer,
  type IncomingMessage,
  type ServerResponse,
} from 'node:http';
import { createServer as createHttpsServer } from 'node:https';
import { extname, resolve, sep } from 'node:path';

/** What a static host must know of the files: nothing but their types. */
const contentTypes: Readonly<Record<string, string>> = {
  '.crt': 'application/x-x509-ca-cert',
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};

export interface StaticServerOptions {
  /** Folder whose files are served. */
  readonly folder: string;
  /** Path under which they are served; begins and ends with a slash. */
  readonly basePath: string;
  /** Address to listen on: 127.0.0.1 keeps it on this machine. */
  readonly host: string;
  /** 0 takes any free port. */
  readonly port: number;
  /** PEM texts; with them the server speaks HTTPS. */
  readonly certificate?: { readonly key: string; readonly cert: string };
}

export interface StaticServer {
  readonly port: number;
  /** Ends open connections too, so that a client sees the server gone at once. */
  stop(): Promise<void>;
}

/** Serves a folder read-only. Rejects with the system's error when the port is taken. */
export function startStaticServer(options: StaticServerOptions): Promise<StaticServer> {
  const { basePath, certificate, host, port } = options;
  if (!basePath.startsWith('/') || !basePath.endsWith('/')) {
    throw new RangeError(`The base path must begin and end with a slash; got "${basePath}".`);
  }
  const folder = resolve(options.folder);
  const listener = (request: IncomingMessage, response: ServerResponse) =>
    answer(folder, basePath, request, response);
  const server = certificate
    ? createHttpsServer({ key: certificate.key, cert: certificate.cert }, listener)
    : createHttpServer(listener);

  return new Promise((started, failed) => {
    server.once('error', failed);
    server.listen(port, host, () => {
      const address = server.address();
      if (address === null || typeof address === 'string')
        throw new TypeError('No port was bound.');
      started({
        port: address.port,
        stop: () =>
          new Promise((stopped) => {
            server.close(() => stopped());
            server.closeAllConnections();
          }),
      });
    });
  });
}

function answer(
  folder: string,
  basePath: string,
  request: IncomingMessage,
  response: ServerResponse,
): void {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { allow: 'GET, HEAD' }).end();
    return;
  }
  const path = decodedPath(request.url ?? '/');
  if (path !== undefined && `${path}/` === basePath) {
    response.writeHead(308, { location: basePath }).end();
    return;
  }
  const file = path?.startsWith(basePath)
    ? fileFor(folder, path.slice(basePath.length))
    : undefined;
  if (file === undefined) {
    response.writeHead(404, { 'content-type': 'text/plain' }).end('Not found');
    return;
  }
  response.writeHead(200, {
    'content-type': contentTypes[extname(file)] ?? 'application/octet-stream',
    // Names under assets/ carry a hash of their content; all else must be asked for again.
    'cache-control': file.includes(`${sep}assets${sep}`)
      ? 'public, max-age=31536000, immutable'
      : 'no-cache',
    'x-content-type-options': 'nosniff',
  });
  if (request.method === 'HEAD') response.end();
  // A file may go while it is sent, as the folder of a test does.
  else
    createReadStream(file)
      .on('error', () => response.destroy())
      .pipe(response);
}

function decodedPath(url: string): string | undefined {
  try {
    return decodeURIComponent(url.replace(/[?#].*$/, ''));
  } catch {
    return undefined;
  }
}

function fileFor(folder: string, path: string): string | undefined {
  const file = resolve(
    folder,
    path === '' || path.endsWith('/') ? `./${path}index.html` : `./${path}`,
  );
  if (path.includes('\0') || !file.startsWith(folder + sep)) return undefined;
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}
