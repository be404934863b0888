import { oneHumbuckerOneKnob } from '../../src/circuit/catalog/one-humbucker-one-knob.ts';
import { twoHumbuckersFourKnobs } from '../../src/circuit/catalog/two-humbuckers-four-knobs.ts';
import type { Circuit } from '../../src/circuit/circuit.ts';
import { celsius, ohms } from '../../src/circuit/units.ts';
import { answerOf, readingsOf } from '../../src/closing/answers.fixture.ts';
import { closingBench, planOf } from '../../src/closing/plan.ts';
import { exportJob } from '../../src/notebook/exchange.ts';
import { JOB_VERSION, type Job } from '../../src/notebook/job.ts';
import { bringIn, onScreen } from './hunting.ts';
import { pagesOf } from './paper.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 60_000 });

const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };

/** A job that was checked in each of these rooms, a day after the other. */
function checkedIn(rooms: readonly number[], circuit: Circuit): Job {
  const checks = rooms.map((room, day) => {
    const bench = closingBench(circuit, meter);
    const { items } = planOf(bench, 'open');
    // In a room of 20 C copper has the ohms that are printed (IEC 60028).
    const warm = closingBench(circuit, { ...meter, room: celsius(room) });
    const readings = readingsOf(
      items.flatMap(({ ask, times }) =>
        Array.from({ length: times }, () => ({ ask, seen: answerOf(warm, ask) })),
      ),
    ).map((one) => ({
      ...one,
      id: `d${day}-${one.id}`,
      at: one.at.replace('2030-01-01', `2030-01-0${day + 1}`),
    }));
    const date = `2030-01-0${day + 1}T`;
    return {
      readings,
      check: {
        stage: 'open' as const,
        startedAt: `${date}11:59:00.000Z`,
        endedAt: `${date}13:00:00.000Z`,
        celsius: room,
      },
    };
  });
  return {
    format: 'lugwise-job',
    version: JOB_VERSION,
    id: 'checked',
    title: 'Blue one',
    guitar: { id: 'checked', title: 'Blue one' },
    createdAt: '2030-01-01T10:00:00Z',
    changedAt: '2030-01-03T13:00:00Z',
    circuit,
    meter,
    access: 'open',
    readings: checks.flatMap(({ readings }) => readings),
    refused: [],
    repairs: [],
    checks: checks.map(({ check }) => check),
    closedAt: '2030-01-03T13:00:00.000Z',
  };
}

test('the record tells what changed since the check before: a coil 8 degrees warmer', async ({
  app,
  page,
}) => {
  const job = checkedIn([20, 28], oneHumbuckerOneKnob());
  await bringIn(page, app.address, exportJob(job));
  await page.goto(`${app.address}#/job/${job.id}/proof`);
  await onScreen(page, 'proof');
  const proof = page.locator('.proof');
  await expect(proof).toContainText('Since the check before');
  // 8 K of copper at 0.393 % a kelvin are 3.1 % (IEC 60028).
  await expect(proof).toContainText(/is 3\s% up, [^:]*: warmer by 8\sdegrees/);
  await page.getByRole('button', { name: 'The one before' }).click();
  await expect(proof).not.toContainText('Since the check before');
});

test('the record of a guitar with two humbuckers and four knobs is one page of paper', {
  tag: '@long',
}, async ({ app, page }) => {
  test.setTimeout(120_000);
  const job = checkedIn([21], twoHumbuckersFourKnobs());
  await bringIn(page, app.address, exportJob(job));
  await page.goto(`${app.address}#/job/${job.id}/proof`);
  await onScreen(page, 'proof');
  await expect(page.locator('.proof')).toContainText('Ruled out', { timeout: 60_000 });
  const paper = await page.pdf({
    format: 'A4',
    ...(process.env.PAPER ? { path: process.env.PAPER } : {}),
  });
  expect(pagesOf(paper)).toBe(1);
});
