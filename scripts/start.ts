// `npm start`: builds the app and serves it. By default on this machine only; with `--https` to the
// phones on the local network, because a phone keeps an app offline only from a secure origin.
import { X509Certificate } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { hostname, networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { buildApp } from './build.ts';
import { type Certificate, certificateFor, publicFolder } from './certificate.ts';
import { dist, root } from './folders.ts';
import { startStaticServer } from './static-server.ts';

const { values: flags } = parseArgs({
  options: {
    https: { type: 'boolean', default: false },
    port: { type: 'string', default: '4173' },
    base: { type: 'string', default: '/' },
  },
});
const port = Number(flags.port);
if (!Number.isInteger(port) || port < 1 || port > 65_534) {
  throw new RangeError(`--port must be a whole number from 1 to 65534; got "${flags.port}".`);
}

await buildApp();
await (flags.https ? serveToPhones() : serveHere()).catch((error: NodeJS.ErrnoException) => {
  if (error.code !== 'EADDRINUSE') throw error;
  const ports = flags.https ? `${port} or ${port + 1}` : port;
  console.error(`Port ${ports} is taken. Choose another: npm start -- --port 4300`);
  process.exit(1);
});
console.log('Stop with Ctrl+C.');

async function serveHere(): Promise<void> {
  await startStaticServer({ folder: dist, basePath: flags.base, host: '127.0.0.1', port });
  console.log(`\nLugwise is open at http://localhost:${port}${flags.base}`);
  console.log('For a phone on the same network: npm start -- --https');
}

async function serveToPhones(): Promise<void> {
  const addresses = localAddresses();
  const folder = join(root, '.certificate');
  const certificate = certificateFor(['localhost', '127.0.0.1', hostname(), ...addresses], folder);
  const host = '0.0.0.0';
  await startStaticServer({ folder: dist, basePath: flags.base, host, port, certificate });
  await startStaticServer({
    folder: join(folder, publicFolder),
    basePath: '/',
    host,
    port: port + 1,
  });
  console.log('\nLugwise is open on this network at');
  for (const address of addresses) console.log(`  https://${address}:${port}${flags.base}`);
  if (addresses.length === 0)
    console.log(`  (no network found) https://localhost:${port}${flags.base}`);
  sayHowToTrust(certificate, addresses[0] ?? 'localhost');
}

function sayHowToTrust({ authorityFile, isNew }: Certificate, address: string): void {
  const { fingerprint256 } = new X509Certificate(readFileSync(authorityFile));
  console.log(
    `\n${isNew ? 'A new certificate was made. ' : ''}Once for each phone, so that it keeps the app offline:`,
    `\n  1. open http://${address}:${port + 1}/lugwise-authority.crt on the phone,`,
    '\n  2. install it as a trusted certificate authority in the settings of the phone,',
    `\n  3. check its SHA-256 fingerprint: ${fingerprint256}`,
    '\nThe key of this authority was thrown away when it was made: it vouches for this server only.',
  );
}

function localAddresses(): string[] {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
}
