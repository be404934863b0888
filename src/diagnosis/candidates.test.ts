import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { checkSetting } from '../circuit/check.ts';
import { EVERYWHERE } from '../circuit/edit.ts';
import { layoutOf, nodeAt } from '../circuit/netlist.ts';
import { reachOf } from '../circuit/reach.ts';
import { askKey } from './ask-key.ts';
import { candidates } from './candidates.ts';
import { effortOf } from './effort.ts';
import { Bench } from './evidence.fixture.ts';
import { openAsks } from './open-asks.ts';

const wirings = startingWirings.map(({ id, build }) => [id, build()] as const);

describe.each(wirings)('the readings offered for %s', (_id, circuit) => {
  const layout = layoutOf(circuit);
  const [closed, open] = [candidates(layout, 'closed'), candidates(layout, 'open')];

  // The jack itself and outside metal to the sleeve come once from outside and once more with the lugs inside.
  it('are each offered once', () => {
    const keys = open.map(askKey);
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
  });

  it('move the wires with a probe behind each capacitor, where no ohms come from the jack', () => {
    const behind = open.flatMap((ask) =>
      ask.kind === 'flex' && ask.site === EVERYWHERE ? [ask.red, ask.black] : [],
    );
    for (const part of circuit.parts.filter(({ kind }) => kind === 'capacitor')) {
      const legs = circuit.leads.filter(({ from }) => from.startsWith(`${part.id}.`));
      // One that a selector leaves alone in this setting is behind nothing.
      expect(legs.some(({ id }) => behind.includes(`${id}@to`))).toBe(true);
    }
  });

  it('stand on points a probe can reach, in settings that are there', () => {
    for (const [access, asks] of [
      ['closed', closed],
      ['open', open],
    ] as const)
      for (const ask of asks) {
        expect(() => checkSetting(circuit, ask.setting)).not.toThrow();
        if (!('red' in ask)) continue;
        for (const node of [ask.red, ask.black]) {
          nodeAt(layout, node);
          const reach = reachOf(layout, node);
          if (access === 'closed') expect(reach, node).toBe('outside');
          else expect(['outside', 'cavity', 'pickup-out'], node).toContain(reach);
        }
        expect(ask.red).not.toBe(ask.black);
      }
  });

  it('with the guitar closed lift nothing', () => {
    for (const { setting } of closed) expect(setting.lifted).toEqual([]);
  });

  it('begin at the jack', () => {
    expect(closed[0]).toMatchObject({ kind: 'ohms', red: 'jack.tip', black: 'jack.sleeve' });
    expect(open[0]).toEqual(closed[0]);
  });

  it('read every coil alone with a lead lifted', () => {
    const lifted = open.filter(({ kind, setting }) => kind === 'ohms' && setting.lifted.length > 0);
    for (const pickup of circuit.pickups)
      expect(
        lifted.some(({ setting }) =>
          setting.lifted.some((joint) =>
            circuit.leads.some(
              ({ id, from }) =>
                joint === `${id}@to` && pickup.coils.some((coil) => from.startsWith(`${coil}.`)),
            ),
          ),
        ),
        pickup.id,
      ).toBe(true);
  });

  it('cost seconds above 0, more with something to unsolder, less where nothing moves', () => {
    for (const ask of open) {
      const seconds = effortOf(layout, ask, null);
      expect(seconds).toBeGreaterThan(0);
      expect(effortOf(layout, ask, ask)).toBeLessThanOrEqual(seconds);
      if (ask.setting.lifted.length > 0)
        expect(seconds).toBeGreaterThan(effortOf(layout, closed[0]!, null) + 60);
    }
  });
});

describe('openAsks', () => {
  const bench = new Bench('one-humbucker-one-knob');
  const asks = [
    ...new Map(
      candidates(bench.predictor.layout, 'open').map((ask) => [askKey(ask), ask]),
    ).values(),
  ];

  it('leaves out what was answered and what was refused', () => {
    const look = asks.find(({ kind }) => kind === 'look')!;
    const answered = bench.reading(look, { kind: 'look', how: 'good' });
    const left = openAsks(asks, [answered], [asks[3]!]);
    expect(left).toHaveLength(asks.length - 2);
    expect(left).not.toContain(look);
    expect(left).not.toContain(asks[3]);
  });

  it('lets a figure be read twice more, and not where the reading was refused', () => {
    const [one] = asks;
    const read = bench.reading(one!, { kind: 'ohms', ohms: 'open' });
    expect(openAsks(asks, [read], [])).toContain(one);
    expect(openAsks(asks, [read, read], [])).toContain(one);
    expect(openAsks(asks, [read, read, read], [])).not.toContain(one);
    expect(openAsks(asks, [read], [one!])).not.toContain(one);
  });

  it('knows an ask again when it is another object with its settings in another order', () => {
    const one = asks[0]!;
    const copy = {
      ...one,
      setting: {
        ...one.setting,
        knobs: Object.fromEntries(Object.entries(one.setting.knobs).reverse()),
      },
    };
    expect(openAsks(asks, [], [copy])).toHaveLength(asks.length - 1);
  });

  it('keeps the same points in another setting, and another kind at the same points', () => {
    const one = {
      kind: 'ohms',
      red: 'jack.tip',
      black: 'jack.sleeve',
      setting: bench.at(),
    } as const;
    const others = [
      { ...one, setting: bench.at(undefined, { volume: 0 }) },
      { ...one, kind: 'beep' as const },
    ];
    expect(openAsks(others, [], [one])).toEqual(others);
  });
});
