import { spawnSync } from 'node:child_process';
import { randomBytes, X509Certificate } from 'node:crypto';
import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** One year: phones refuse certificates of a private authority that live longer than 825 days. */
const lifeInDays = 365;
const renewWhenDaysLeft = 14;

/** The one folder inside the certificate's folder that may be handed out. */
export const publicFolder = 'public';
const authorityName = join(publicFolder, 'lugwise-authority.crt');

export interface Certificate {
  /** PEM text of the server's private key. */
  readonly key: string;
  /** PEM text of the server's certificate. */
  readonly cert: string;
  /** File of the authority's certificate: what the phone is asked to trust. */
  readonly authorityFile: string;
  readonly isNew: boolean;
}

/**
 * A certificate for the given names and addresses, made on first use and kept in `folder`.
 *
 * A browser registers no service worker on a page whose certificate it does not trust, even when the
 * person has clicked the warning away. So the certificate comes from an authority made for it alone,
 * which the phone can be told to trust. The authority's key is thrown away at once: nobody can sign
 * another certificate with it, whoever gets hold of the folder.
 *
 * @throws Error when openssl is missing or fails
 */
export function certificateFor(names: readonly string[], folder: string): Certificate {
  const file = (name: string) => join(folder, name);
  const authorityFile = file(authorityName);
  const isNew = !isUsable(file('server.crt'), file('server.key'), authorityFile, names);
  if (isNew) makeCertificate(names, folder);
  return {
    key: readFileSync(file('server.key'), 'utf8'),
    cert: readFileSync(file('server.crt'), 'utf8'),
    authorityFile,
    isNew,
  };
}

function isUsable(
  certFile: string,
  keyFile: string,
  authorityFile: string,
  names: readonly string[],
): boolean {
  if (![certFile, keyFile, authorityFile].every(existsSync)) return false;
  const certificate = new X509Certificate(readFileSync(certFile));
  const daysLeft = (Date.parse(certificate.validTo) - Date.now()) / 86_400_000;
  return (
    daysLeft > renewWhenDaysLeft &&
    names.every((name) =>
      isAddress(name) ? certificate.checkIP(name) : certificate.checkHost(name),
    )
  );
}

function makeCertificate(names: readonly string[], folder: string): void {
  mkdirSync(join(folder, publicFolder), { recursive: true, mode: 0o700 });
  const file = (name: string) => join(folder, name);
  const alternatives = names.map((name) => `${isAddress(name) ? 'IP' : 'DNS'}:${name}`).join(',');
  writeFileSync(
    file('server.ext'),
    `basicConstraints=critical,CA:FALSE\nkeyUsage=critical,digitalSignature,keyEncipherment\nextendedKeyUsage=serverAuth\nsubjectAltName=${alternatives}\n`,
  );
  const newKey = ['-newkey', 'rsa:2048', '-nodes', '-sha256'];
  const life = ['-days', String(lifeInDays)];
  const authority = ['-CA', file(authorityName), '-CAkey', file('authority.key')];
  const serial = ['-set_serial', `0x${randomBytes(16).toString('hex')}`];
  try {
    openssl(
      ['req', '-x509', ...newKey, ...life, '-subj', '/CN=Lugwise local authority'],
      ['-addext', 'keyUsage=critical,keyCertSign'],
      ['-keyout', file('authority.key'), '-out', file(authorityName)],
    );
    openssl(
      ['req', ...newKey, '-subj', '/CN=Lugwise on this network'],
      ['-keyout', file('server.key'), '-out', file('server.csr')],
    );
    openssl(
      ['x509', '-req', '-sha256', ...life, ...authority, ...serial],
      ['-in', file('server.csr'), '-extfile', file('server.ext'), '-out', file('server.crt')],
    );
    chmodSync(file('server.key'), 0o600);
  } finally {
    for (const leftover of ['authority.key', 'server.csr', 'server.ext']) {
      rmSync(file(leftover), { force: true });
    }
  }
}

function openssl(...groups: string[][]): void {
  const args = groups.flat();
  const { status, error, stderr } = spawnSync('openssl', args, { encoding: 'utf8' });
  if (error) throw new Error('openssl is needed to make a certificate, and it is not installed.');
  if (status !== 0) throw new Error(`openssl ${args[0]} failed: ${stderr.trim()}`);
}

function isAddress(name: string): boolean {
  return /^[\d.]+$/.test(name) || name.includes(':');
}
