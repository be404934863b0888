import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../circuit/catalog/index.ts';
import { EVERYWHERE } from '../../circuit/edit.ts';
import { restingSetting } from '../../circuit/setting.ts';
import { ProbeDrawing } from './index.ts';
import { shown } from './markup.ts';

describe('wires moved part by part', () => {
  for (const { id, build } of startingWirings)
    it(`are drawn for ${id}, all at once and at each part`, () => {
      const circuit = build();
      const setting = restingSetting(circuit);
      for (const site of [EVERYWHERE, ...circuit.parts.map((part) => part.id)]) {
        const ask = { kind: 'flex', site, red: 'jack.tip', black: 'jack.sleeve', setting } as const;
        expect(shown(<ProbeDrawing circuit={circuit} ask={ask} />)[0]?.text).toContain('jack');
      }
    });
});
