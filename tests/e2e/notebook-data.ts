import type { Page } from '@playwright/test';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { restingSetting } from '../../src/circuit/setting.ts';
import { ohms } from '../../src/circuit/units.ts';
import { begunJob } from '../../src/notebook/begun-job.ts';
import { exportCollection } from '../../src/notebook/collection.ts';
import type { Job } from '../../src/notebook/job.ts';
import type { Reading } from '../../src/readings/reading.ts';

/** Invented jobs for the tests of the notebook, and a look at what the browser stores. */

const minute = (count: number): string => new Date(Date.UTC(2026, 2, 1, 10, count)).toISOString();

const circuit = () => startingWirings.find(({ id }) => id === 'one-humbucker-one-knob')!.build();

export const atJack = (id: string, at: string, value = 8200): Reading => ({
  id,
  ask: {
    kind: 'ohms',
    red: 'jack.tip',
    black: 'jack.sleeve',
    setting: restingSetting(circuit()),
  },
  seen: { kind: 'ohms', ohms: ohms(value) },
  at,
  round: 0,
});

export function jobCalled(id: string, title: string, more: Partial<Job> = {}): Job {
  const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };
  return {
    ...begunJob({ id, title, circuit: circuit(), meter, access: 'open' }, minute(0)),
    cautionsReadAt: minute(1),
    ...more,
  };
}

/** A guitar with a closed job of spring and a closing check, another guitar, and a third. */
export function threeJobs(): readonly Job[] {
  const measured = circuit();
  const parts = measured.parts.map((part) =>
    part.kind === 'pot' ? { ...part, ohms: { ...part.ohms, measured: ohms(478e3) } } : part,
  );
  return [
    jobCalled('spring', 'Red one, spring', {
      guitar: { id: 'red', title: 'The red one' },
      circuit: { ...measured, parts },
      readings: [atJack('r1', minute(5))],
      repairs: [
        { repair: 'remake hot@to', title: 'Remake the joint of the hot lead', at: minute(4) },
      ],
      checks: [{ stage: 'closed', startedAt: minute(4), endedAt: minute(6), celsius: 20 }],
      closedAt: minute(6),
      changedAt: minute(6),
    }),
    jobCalled('blue', 'The blue one', { changedAt: minute(3) }),
    jobCalled('cafe', 'Café guitar', { changedAt: minute(2) }),
  ];
}

export const notebookOf = (jobs: readonly Job[]): string =>
  exportCollection({ jobs, sheets: [], photos: [] }, minute(30));

/** All that the browser's databases hold, photos as numbers: nothing is asked of the app. */
export function everythingStored(page: Page): Promise<Record<string, readonly unknown[]>> {
  return page.evaluate(async () => {
    const open = (name: string) =>
      new Promise<IDBDatabase | null>((resolve) => {
        const opening = indexedDB.open(name);
        // There was none, and looking makes none.
        opening.onupgradeneeded = () => opening.transaction?.abort();
        opening.onerror = () => resolve(null);
        opening.onsuccess = () => resolve(opening.result);
      });
    const found: Record<string, readonly unknown[]> = { drafts: [] };
    for (const name of ['lugwise', 'lugwise-drafts']) {
      const db = await open(name);
      if (!db) continue;
      for (const store of db.objectStoreNames) {
        const all = db.transaction(store).objectStore(store).getAll();
        await new Promise((resolve) => {
          all.onsuccess = resolve;
        });
        found[store] = all.result.map((one: { data?: Uint8Array }) =>
          one.data ? { ...one, data: [...one.data] } : one,
        );
      }
      db.close();
    }
    return found;
  });
}

/** A picture as a camera gives it: large, and as rich as can be, so that it does not get small by itself. */
export async function cameraPicture(page: Page, width = 1800, height = 1200): Promise<Buffer> {
  const base64 = await page.evaluate(
    async ([across, down]) => {
      const canvas = document.createElement('canvas');
      canvas.width = across;
      canvas.height = down;
      const context = canvas.getContext('2d')!;
      const picture = context.createImageData(across, down);
      const pixels = new Uint32Array(picture.data.buffer);
      for (let at = 0, noise = 1; at < pixels.length; at++) {
        // A linear congruential generator; the constants are from "Numerical Recipes".
        noise = (Math.imul(noise, 1_664_525) + 1_013_904_223) >>> 0;
        pixels[at] = noise | 0xff000000;
      }
      context.putImageData(picture, 0, 0);
      const address = canvas.toDataURL('image/jpeg', 0.9);
      return address.slice(address.indexOf(',') + 1);
    },
    [width, height] as const,
  );
  return Buffer.from(base64, 'base64');
}
