import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { byEar } from './by-ear.ts';
import { fieldCases } from './case.ts';
import { allOutcomes, type EarOutcome, earOutcomes, type Outcome } from './replay.ts';
import { notReplayed, replays } from './replays.ts';
import { fieldCaseDocument } from './table.ts';

let outcomes: ReadonlyMap<string, readonly Outcome[]>;
let heard: readonly EarOutcome[];
beforeAll(() => {
  outcomes = allOutcomes();
  heard = earOutcomes();
}, 300_000);

describe('the field cases', () => {
  it('are each replayed, or listed with the reason', () => {
    const told = fieldCases.map(({ id }) => id);
    expect(new Set(told).size).toBe(told.length);
    expect([...replays.map(({ id }) => id), ...Object.keys(notReplayed)].sort()).toEqual(
      told.sort(),
    );
  });

  it('say where they come from', () => {
    for (const { id, source } of fieldCases)
      expect(source, id).toMatch(
        /^https?:[/][/]|^public repair thread, address kept by the maintainers$/,
      );
  });

  it('tell the readings that the replays hand on', () => {
    for (const replay of replays) {
      const told = fieldCases.find(({ id }) => id === replay.id)!;
      for (const { seen } of replay.steps)
        if (seen.kind === 'ohms')
          expect(
            told.readings.map(({ ohms }) => ohms),
            replay.id,
          ).toContain(seen.ohms);
    }
  });

  it('are put by ear with no meter, and with the repair that the full replay has', () => {
    for (const { id, heard, resolved, wiring } of byEar) {
      expect(
        heard.map(({ seen }) => seen.kind).filter((kind) => !/listen|touch/.test(kind)),
      ).toEqual([]);
      const full = replays.find((replay) => replay.id === id);
      if (full)
        expect({ resolved, wiring }, id).toEqual({ resolved: full.resolved, wiring: full.wiring });
    }
  });

  it('give the document that is committed: run npm run -s field-cases after a change of the engine', () => {
    const committed = readFileSync(new URL('../../docs/field-cases.md', import.meta.url), 'utf8');
    expect(fieldCaseDocument(outcomes, heard)).toBe(committed);
  });
});

// K15: a silent bridge pickup, 430 k at the jack on bridge and 7 k on neck, volume full. That a pot cannot be blamed is physics: on
// neck the very same pot reads as it should.
describe('a reading of pot size on one pickup alone', () => {
  const afterSteps = (steps: number) =>
    outcomes.get('K15')!.find((one) => one.steps === steps)!.assessment;

  it('puts the open bridge pickup first and blames no pot', () => {
    expect(afterSteps(2).suspects[0]!.repair).toBe('coil:bridgeCoil');
    for (const { repair, probability } of afterSteps(2).suspects)
      if (repair.startsWith('pot:')) expect(probability, repair).toBeLessThan(0.05);
  });

  it('asks for the bridge pickup next', () => {
    const next = afterSteps(2).next[0]!.ask;
    expect('red' in next && `${next.red} ${next.black}`).toMatch(/bridge(Hot|Braid|Coil)/);
  });

  it('is settled by the pickup with its lead lifted', () => {
    expect(afterSteps(3).verdict).toMatchObject({
      kind: 'repair',
      repairs: ['coil:bridgeCoil'],
    });
  });
});
