import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../circuit/catalog/index.ts';
import { twoHumbuckersFourKnobs } from '../../circuit/catalog/two-humbuckers-four-knobs.ts';
import { restingSetting } from '../../circuit/setting.ts';
import type { Ask } from '../../readings/reading.ts';
import { describeAsk } from './describe.ts';
import { findAll, type Shown, shown } from './markup.ts';
import { ProbeDrawing } from './probe-drawing.tsx';
import { PROBE_LETTER } from './theme.ts';

const four = twoHumbuckersFourKnobs();
const setting = restingSetting(four);
const draw = (ask: Ask, circuit = four): readonly Shown[] =>
  shown(<ProbeDrawing circuit={circuit} ask={ask} />);
const words = (nodes: readonly Shown[]) =>
  findAll(nodes, ({ tag }) => tag === 'text').map(({ text }) => text);

const asks: readonly Ask[] = [
  { kind: 'ohms', red: 'neckVolume.3', black: 'neckVolume.case', setting },
  { kind: 'beep', red: 'jack.sleeve', black: 'strings.metal', setting },
  { kind: 'turn', pot: 'neckVolume', red: 'neckVolume.2', black: 'neckVolume.1', setting },
  { kind: 'flex', site: 'jackHot', red: 'jack.tip', black: 'selector.C', setting },
  { kind: 'tap', coil: 'neckSlug', red: 'jack.tip', black: 'jack.sleeve', setting },
  { kind: 'farads', part: 'neckCap', red: 'neckCap.a', black: 'neckCap.b', setting },
  { kind: 'listen', setting },
  { kind: 'touch', metal: 'strings.metal', setting },
  { kind: 'look', at: 'neckHot@to', setting },
  { kind: 'look', at: 'selector', setting },
  { kind: 'pole', coil: 'bridgeScrew', setting },
];

describe('every kind of ask', () => {
  it.each(asks.map((ask) => [ask.kind, ask] as const))(
    '%s is drawn with a sentence for it',
    (_, ask) => {
      const nodes = draw(ask);
      const svg = nodes[0]!;
      expect(svg.props['role']).toBe('img');
      expect(svg.props['aria-label']).toMatch(/^[A-Z].+\.$/);
      // A lug may be called B as well; the letter of a probe stands in its mark.
      const marks = findAll(
        nodes,
        ({ tag, props }) => tag === 'text' && props['fill'] === PROBE_LETTER,
      ).map(({ text }) => text);
      expect(marks.sort()).toEqual('red' in ask ? ['B', 'R'] : []);
    },
  );

  it.each(startingWirings.map((wiring) => [wiring.title, wiring.build()] as const))(
    'holds no undefined or broken number: %s',
    (_, circuit) => {
      for (const lead of circuit.leads) {
        const here = restingSetting(circuit);
        for (const lifted of [[], [`${lead.id}@to`]]) {
          const ask: Ask = {
            kind: 'ohms',
            red: `${lead.id}@to`,
            black: lead.to,
            setting: { ...here, lifted },
          };
          const text = JSON.stringify(draw(ask, circuit));
          expect(text).not.toMatch(/NaN|undefined|Infinity/);
        }
      }
    },
  );
});

describe('what the drawing says', () => {
  it('the side seen and how to count', () => {
    const ask: Ask = { kind: 'ohms', red: 'neckVolume.3', black: 'neckVolume.1', setting };
    expect(words(draw(ask)).join(' ')).toContain('seen from the back, lugs down: 3\u00a02\u00a01');
    const blade: Ask = { kind: 'ohms', red: 'selector.A', black: 'selector.C', setting };
    expect(words(draw(blade))).toContain('seen from the soldering side');
  });

  it('the very coil that is meant', () => {
    const ask: Ask = { kind: 'ohms', red: 'neckSlug.start', black: 'neckSlug.finish', setting };
    expect(words(draw(ask))).toContain("neck pickup's slug coil");
  });

  it('a lifted lead that is not in the picture', () => {
    const lifted = { ...setting, lifted: ['neckCapHotLeg@to'] };
    const ask: Ask = {
      kind: 'farads',
      part: 'neckCap',
      red: 'neckCap.a',
      black: 'neckCap.b',
      setting: lifted,
    };
    expect(words(draw(ask)).join(' ')).toContain('Lifted: the lead at lug 3 of the neck volume');
    expect(describeAsk(four, ask)).toBe(
      'Red probe, marked R, on leg a of the neck tone capacitor; black probe, marked B, on leg b of the neck tone capacitor, to read the capacitance of the neck tone capacitor. The lead at lug 3 of the neck volume is lifted.',
    );
  });

  it('the plug, when a cable is in', () => {
    const ask: Ask = {
      kind: 'ohms',
      red: 'jack.tip',
      black: 'jack.sleeve',
      setting: { ...setting, plug: 'in' },
    };
    expect(describeAsk(four, ask)).toBe(
      'Red probe, marked R, on the tip of the output jack; black probe, marked B, on the sleeve of the output jack, reached at the free plug of the cable.',
    );
  });

  it('never sets text below 12 units, which a phone 390 wide shows as 12 px', () => {
    for (const ask of asks)
      for (const { props } of findAll(draw(ask), ({ props }) => 'font-size' in props))
        expect(props['font-size']).toBeGreaterThanOrEqual(12.1);
  });
});
