import { describe, expect, it } from 'vitest';
import { assessment, atJack, inside, next, ready, verdict } from './hunt.fixture.ts';
import { questionFrom } from './question.ts';

const both = [next(inside), next(atJack)];

describe('the question', () => {
  it('is the best of the engine that was not refused', () => {
    expect(questionFrom(ready, assessment({ next: both }))?.ask).toEqual(inside);
    const refused = { ...ready, refused: [inside] };
    expect(questionFrom(refused, assessment({ next: both }))?.ask).toEqual(atJack);
  });
  it('is none when a verdict stands', () =>
    expect(questionFrom(ready, assessment({ next: both, verdict }))).toBeNull());
  it('is first what failed before a repair, verdict or not', () => {
    const mended = { ...ready, repairs: [{ repair: 'coil', title: 'Mend the coil', at: '' }] };
    const found = questionFrom(
      mended,
      assessment({ next: both, verdict, recheck: [next(atJack)] }),
    );
    expect(found).toMatchObject({ purpose: 'recheck', ask: atJack });
  });
  it('is no recheck where nothing was mended', () =>
    expect(questionFrom(ready, assessment({ recheck: [next(atJack)] }))).toBeNull());
});
