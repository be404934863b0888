import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { layoutOf, nodeAt, siteAt } from '../circuit/netlist.ts';
import { switchSettings } from '../circuit/setting.ts';
import { wire } from '../circuit/wired.ts';
import type { Fault } from './fault.ts';
import { families, faultsOf, suspectsOf } from './index.ts';

const wirings = startingWirings.map(({ id, build }) => [id, build()] as const);
const sum = (list: readonly number[]) => list.reduce((total, one) => total + one, 0);

describe.each(wirings)('the faults of %s', (_id, circuit) => {
  const layout = layoutOf(circuit);
  const faults = faultsOf(circuit);

  it('have weights above 0 that sum to 1', () => {
    expect(sum(faults.map(({ weight }) => weight))).toBeCloseTo(1, 12);
    for (const fault of faults) expect(fault.weight, fault.id).toBeGreaterThan(0);
  });

  it('keep the shares of their families', () => {
    const present = families.filter(({ name }) => faults.some(({ family }) => family === name));
    const all = sum(present.map(({ share }) => share));
    for (const { name, share } of present)
      expect(
        sum(faults.filter(({ family }) => family === name).map(({ weight }) => weight)),
        name,
      ).toBeCloseTo(share / all, 12);
  });

  it('have one id each', () => {
    const ids = faults.map(({ id }) => id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  it('have sizes that share out their prior', () => {
    for (const fault of faults) {
      expect(sum(fault.variants.map(({ share }) => share)), fault.id).toBeCloseTo(1, 12);
      for (const { share } of fault.variants) expect(share, fault.id).toBeGreaterThan(0);
    }
  });

  it('edit sites, lugs, parts and positions that are there', () => {
    const coils = new Set(circuit.parts.filter(({ kind }) => kind === 'coil').map(({ id }) => id));
    for (const { variants } of faults)
      for (const { edits } of variants) {
        for (const edit of edits)
          switch (edit.op) {
            case 'open':
            case 'resist':
            case 'intermittent':
              siteAt(layout, edit.site);
              break;
            case 'bridge':
              expect(nodeAt(layout, edit.a)).not.toBe(nodeAt(layout, edit.b));
              break;
            case 'land':
              siteAt(layout, edit.joint);
              nodeAt(layout, edit.lug);
              break;
            case 'exchange':
              for (const lug of edit.lugs) nodeAt(layout, lug);
              break;
            case 'stick': {
              const part = layout.parts.get(edit.part);
              expect(part?.kind === 'switch' && part.positions.map(({ name }) => name)).toContain(
                edit.position,
              );
              break;
            }
            case 'turn-magnet':
              expect(coils).toContain(edit.coil);
              break;
            case 'scale':
            case 'worn':
              expect([...layout.parts.keys()]).toContain(edit.part);
          }
        expect(() => wire(layout, switchSettings(circuit)[0]!, edits)).not.toThrow();
      }
  });

  it('point at sites and parts that are there', () => {
    for (const { id, sites } of faults) {
      expect(sites.length, id).toBeGreaterThan(0);
      for (const site of sites)
        expect(layout.siteIndex.has(site) || layout.parts.has(site), `${id}: ${site}`).toBe(true);
    }
  });

  it('name a loose size that their own edits have', () => {
    for (const { id, variants } of faults)
      for (const { edits, loose } of variants) {
        if (!loose) continue;
        expect(loose.deviation, id).toBeGreaterThan(0);
        if (loose.site === 'first bridge') expect(edits[0]?.op, id).toBe('bridge');
        else expect(layout.siteIndex.has(loose.site), id).toBe(true);
      }
  });

  it('have a repair with steps in sentences and a proof', () => {
    for (const { id, remedy } of faults) {
      expect(remedy.title, id).toMatch(/^[A-Z].*[^.]$/);
      expect(remedy.steps.length, id).toBeGreaterThan(0);
      for (const step of remedy.steps) expect(step, id).toMatch(/^[A-Z].*[.]$/);
      expect(remedy.proof, id).toMatch(/^[A-Z].*[.]$/);
    }
  });

  it('share a repair only where the act is the same', () => {
    const titles = new Map<string, Set<string>>();
    for (const { remedy } of faults)
      titles.set(remedy.key, (titles.get(remedy.key) ?? new Set()).add(remedy.title));
    expect([...titles].filter(([, set]) => set.size > 1)).toEqual([]);
  });

  it('speak in words: no ids, lower case, no full stop', () => {
    for (const { sentence } of faults) {
      expect(sentence).toMatch(/^[a-z].*[^.]$/);
      expect(sentence).not.toMatch(/[a-z][A-Z][a-z]|@|:\S|undefined|NaN/);
    }
  });

  it('are handed out one a size', () => {
    const suspects = suspectsOf(circuit);
    expect(suspects).toHaveLength(sum(faults.map(({ variants }) => variants.length)));
    expect(new Set(suspects.map(({ id }) => id)).size).toBe(suspects.length);
  });

  it('cover every joint, lead, coil, pot, capacitor and contact', () => {
    const has = (test: (fault: Fault) => boolean) => faults.some(test);
    const opens = (site: string) =>
      has(({ variants }) =>
        variants.some(({ edits }) =>
          edits.some((edit) => edit.op === 'open' && edit.site === site),
        ),
      );
    for (const lead of circuit.leads) {
      expect(opens(`${lead.id}@to`), lead.id).toBe(true);
      if (lead.kind === 'wire') expect(opens(`${lead.id}@from`), lead.id).toBe(true);
      if (lead.kind === 'wire' || lead.kind === 'pickup')
        expect(opens(lead.id), lead.id).toBe(true);
    }
    for (const site of layout.sites) {
      if (site.part === undefined) continue;
      // A contact to a lug that nothing is soldered to cannot be missed.
      const bare = [site.a, site.b].some((node) => !layout.jointsAt.has(layout.nodes[node]!));
      if (site.what === 'contact' && layout.parts.get(site.part)?.kind === 'switch' && bare)
        continue;
      expect(opens(site.id), site.id).toBe(true);
    }
    for (const part of circuit.parts) {
      const edited = (op: string) =>
        has(({ variants }) =>
          variants.some(({ edits }) =>
            edits.some((edit) => edit.op === op && Object.values(edit).includes(part.id)),
          ),
        );
      if (part.kind === 'coil') {
        expect(edited('turn-magnet'), part.id).toBe(true);
        expect(edited('scale'), part.id).toBe(true);
        expect(
          has(({ id }) => id === `coil-reversed:${part.id}`),
          part.id,
        ).toBe(true);
      }
      if (part.kind === 'pot') {
        expect(edited('worn'), part.id).toBe(true);
        expect(edited('scale'), part.id).toBe(true);
      }
      if (part.kind === 'capacitor') {
        expect(
          has(({ id }) => id === `cap-short:${part.id}`),
          part.id,
        ).toBe(true);
        expect(edited('scale'), part.id).toBe(true);
      }
      if (part.kind === 'switch') {
        expect(edited('stick'), part.id).toBe(true);
        expect(
          has(({ id }) => id === `turned:${part.id}`),
          part.id,
        ).toBe(true);
      }
      if (part.kind === 'jack') {
        expect(has(({ id }) => id === 'bridge:jack.tip~jack.sleeve')).toBe(true);
        expect(has(({ id }) => id === 'exchange:jack.tip~jack.sleeve')).toBe(true);
      }
    }
  });
});

describe('every family', () => {
  it('says why it has its share, and the shares leave none over', () => {
    for (const { reason, name } of families) expect(reason.length, name).toBeGreaterThan(20);
    expect(new Set(families.map(({ name }) => name)).size).toBe(families.length);
  });

  it('calls its faults by its own name', () => {
    for (const [, circuit] of wirings)
      for (const family of families)
        for (const fault of family.list(circuit, layoutOf(circuit)))
          expect(fault.family).toBe(family.name);
  });
});
