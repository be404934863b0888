import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { root } from '../../scripts/folders.ts';
import { startStaticServer } from '../../scripts/static-server.ts';
import type { Job } from '../../src/notebook/job.ts';

/** The notebook alone, in a page that stores reading after reading and says when each is stored. */
const page = (job: Job): string => `
import { openNotebook } from './notebook.js';
const template = ${JSON.stringify(job)};
window.store = async (tab) => {
  const notebook = await openNotebook();
  if (notebook.place !== 'disk') throw notebook.trouble;
  let job = await notebook.read(template.id).catch(() => notebook.write(template));
  for (let count = 1; ; count++) {
    const at = new Date().toISOString();
    // A reading of the same figure in the same millisecond is the same reading: nobody takes two, but these tabs would.
    const seen = { kind: 'ohms', ohms: 8200 + tab.charCodeAt(0) };
    const reading = { ...template.readings[0], seen, id: tab + count, at };
    job = await notebook.write({ ...job, readings: [...job.readings, reading], changedAt: at });
    await window.stored(at + tab + count);
  }
};
window.list = async () => {
  const notebook = await openNotebook();
  const job = await notebook.read(template.id);
  return job.readings.map(({ id, at }) => at + id);
};
window.ready = true;
`;

export interface NotebookAlone {
  readonly address: string;
  stop(): Promise<void>;
}

/** Serves that page with the notebook as it is in the sources. */
export async function serveNotebookAlone(job: Job): Promise<NotebookAlone> {
  const host = mkdtempSync(join(tmpdir(), 'host-'));
  await build({
    configFile: false,
    logLevel: 'error',
    root,
    build: {
      outDir: host,
      minify: false,
      copyPublicDir: false,
      lib: {
        entry: join(root, 'src/notebook/index.ts'),
        formats: ['es'],
        fileName: () => 'notebook.js',
      },
    },
  });
  writeFileSync(join(host, 'page.js'), page(job));
  writeFileSync(join(host, 'index.html'), '<script type="module" src="page.js"></script>');
  const server = await startStaticServer({
    folder: host,
    basePath: '/',
    host: '127.0.0.1',
    port: 0,
  });
  return {
    address: `http://localhost:${server.port}/`,
    async stop() {
      await server.stop();
      rmSync(host, { recursive: true, force: true });
    },
  };
}
