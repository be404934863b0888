import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import type { EngineRequest } from './protocol.ts';
import { CircuitsKept, CircuitsSent } from './sent-circuits.ts';

const circuits = startingWirings.slice(0, 6).map(({ build }) => build());
const tongue = { language: 'en', region: 'en-GB' } as unknown as EngineRequest['tongue'];
let id = 0;
const about = (at: number): EngineRequest => {
  id += 1;
  return { id, call: 'check', tongue, input: { circuit: circuits[at], readings: [] } as never };
};

describe('wirings on their way to the engine', () => {
  it('go along once, and are whole at the other end', () => {
    const [sent, kept] = [new CircuitsSent(), new CircuitsKept()];
    const sizes: number[] = [];
    // More of them than are kept, so that each is sent again once others took its place.
    for (const at of [0, 0, 1, 0, 2, 3, 4, 0, 1, 5, 4]) {
      const request = about(at);
      const message = structuredClone(sent.pack(request));
      sizes.push(JSON.stringify(message).length);
      expect(kept.unpack(message)).toEqual(request);
    }
    const isShort = sizes.map((size) => size < 300);
    expect(isShort).toEqual([
      ...[false, true, false, true, false, false, false, false, false, false, true],
    ]);
  });

  it('leave a question that has none as it is, and are not made up', () => {
    const [sent, kept] = [new CircuitsSent(), new CircuitsKept()];
    const seed: EngineRequest = { id: 1, call: 'practiceStart', tongue, input: 'seed' };
    expect(kept.unpack(sent.pack(seed))).toEqual(seed);
    sent.pack(about(0));
    expect(() => kept.unpack(sent.pack(about(0)))).toThrow('No wiring was sent for place 0.');
  });
});
