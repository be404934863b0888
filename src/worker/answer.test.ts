import { describe, expect, it } from 'vitest';
import { CircuitError } from '../circuit/errors.ts';
import type { Assessment, Standing } from '../diagnosis/assessment.ts';
import type { Card } from '../diagnosis/card.ts';
import { answer, answerInPieces, type EngineFunctions } from './answer.ts';
import type { EngineRequest } from './protocol.ts';

const request = { id: 7, call: 'stand', input: {} } as EngineRequest<'stand'>;
const engineThat = (stand: () => unknown): EngineFunctions => ({
  stand: stand as () => Standing,
  expect: () => ({ text: '7.4 kΩ' }),
  close: () => {
    throw new Error('not asked to close');
  },
  card: () => ({}) as Card,
  sort: () => {
    throw new Error('not asked to sort');
  },
  check: () => [],
  trial: () => {
    throw new Error('not asked to try');
  },
  changes: () => [],
  positionSounds: () => [],
  practiceStart: () => {
    throw new Error('not asked to practise');
  },
  practiceReading: () => {
    throw new Error('not asked to practise');
  },
  practiceFault: () => {
    throw new Error('not asked to practise');
  },
  positions: () => {
    throw new Error('not asked for positions');
  },
});

describe('the worker answers', () => {
  it('with what the engine gives, under the number of the request', () => {
    expect(
      answer(
        request,
        engineThat(() => 'assessed'),
      ),
    ).toEqual({
      id: 7,
      ok: true,
      output: 'assessed',
    });
    expect(
      answer(
        { ...request, call: 'expect' } as unknown as EngineRequest<'expect'>,
        engineThat(() => ''),
      ),
    ).toEqual({
      id: 7,
      ok: true,
      output: { text: '7.4 kΩ' },
    });
  });

  it('in words when the circuit is at fault, or the engine', () => {
    const circuit = engineThat(() => {
      throw new CircuitError('unknown-lug', 'x.9', 'there is no lug x.9');
    });
    expect(answer(request, circuit)).toEqual({
      id: 7,
      ok: false,
      sentence: 'The wiring cannot be worked out: there is no lug x.9',
    });
    const broken = engineThat(() => {
      throw new RangeError('index out of bounds');
    });
    expect(answer(request, broken)).toMatchObject({
      sentence: 'The engine failed: index out of bounds. Your readings are safe.',
    });
  });

  it('an assessment once it is there, and says why where none comes', async () => {
    const made = { liveSuspects: 3 } as Assessment;
    expect(await answerInPieces(7, Promise.resolve(made))).toEqual({
      id: 7,
      ok: true,
      output: made,
    });
    expect(await answerInPieces(7, Promise.resolve(null))).toEqual({
      id: 7,
      ok: false,
      sentence: 'A newer question took its place.',
    });
    const circuit = new CircuitError('unknown-lug', 'x.9', 'there is no lug x.9');
    expect(await answerInPieces(7, Promise.reject(circuit))).toEqual({
      id: 7,
      ok: false,
      sentence: 'The wiring cannot be worked out: there is no lug x.9',
    });
  });
});
