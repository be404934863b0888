import { describe, expect, it } from 'vitest';
import { answerOf, type IdealPickup, lead, meter, reading, sortThrough } from './ideal.fixture.ts';
import { sortLeads } from './sort.ts';

const rolesOf = (pickup: IdealPickup) => {
  const { sorting } = sortThrough(pickup);
  return {
    state: sorting.state,
    ...Object.fromEntries(sorting.leads.map(({ lead: id, role }) => [id, role])),
  };
};

const fourAndBare: IdealPickup = {
  seen: {
    coils: 2,
    leads: [lead('red'), lead('green'), lead('bare', 'bare'), lead('white'), lead('black')],
    plate: true,
    cover: false,
  },
  nodes: { red: '1', white: '2', green: '3', black: '4', bare: 'p', plate: 'p' },
  coils: { a: ['2', '1', 4200], b: ['3', '4', 4300] },
};

describe('sorting the leads of', () => {
  it('two coils with four leads and a bare one', () => {
    expect(rolesOf(fourAndBare)).toEqual({
      state: 'settled',
      red: 'a.finish',
      white: 'a.start',
      green: 'b.start',
      black: 'b.finish',
      bare: 'plate',
    });
  });

  it('the same with the slug coil the other way round', () => {
    expect(
      rolesOf({ ...fourAndBare, coils: { a: ['2', '1', 4200], b: ['4', '3', 4300] } }),
    ).toEqual({
      state: 'settled',
      red: 'a.finish',
      white: 'a.start',
      green: 'b.finish',
      black: 'b.start',
      bare: 'plate',
    });
  });

  it('the same with a dead slug coil: its leads are told by what is left, without ends', () => {
    expect(
      rolesOf({ ...fourAndBare, coils: { a: ['2', '1', 4200], b: ['3', '4', Infinity] } }),
    ).toEqual({
      state: 'settled',
      red: 'a.finish',
      white: 'a.start',
      green: 'b.open',
      black: 'b.open',
      bare: 'plate',
    });
  });

  it('two coils whose inner leads the factory joined', () => {
    expect(
      rolesOf({
        seen: {
          coils: 2,
          leads: [lead('black'), lead('twisted', 'pair'), lead('red'), lead('bare', 'bare')],
          plate: true,
          cover: false,
        },
        nodes: { red: '1', twisted: '2', black: '3', bare: 'p', plate: 'p' },
        coils: { a: ['3', '2', 4000], b: ['2', '1', 4100] },
      }),
    ).toEqual({
      state: 'settled',
      black: 'a.start',
      twisted: 'link',
      red: 'b.finish',
      bare: 'plate',
    });
  });

  it('one coil with a tap', () => {
    expect(
      rolesOf({
        seen: {
          coils: 1,
          leads: [lead('yellow'), lead('blue'), lead('violet')],
          plate: true,
          cover: false,
        },
        nodes: { yellow: '1', blue: '2', violet: '3', plate: 'p' },
        coils: { a: ['3', '1', 5000], b: ['1', '2', 2600] },
      }),
    ).toEqual({ state: 'settled', violet: 'a.start', yellow: 'tap', blue: 'a.finish' });
  });
});

describe('a wrong reading', () => {
  it('of one tap does not stand: it is asked for again', () => {
    const right = rolesOf(fourAndBare);
    let taps = 0;
    const { sorting } = sortThrough(fourAndBare, (ask) => {
      if (ask.kind !== 'tap') return undefined;
      taps += 1;
      const seen = answerOf(fourAndBare, ask);
      if (taps !== 1 || seen.kind !== 'tap') return undefined;
      return { kind: 'tap', swing: seen.swing === 'plus' ? 'minus' : 'plus' };
    });
    expect(Object.fromEntries(sorting.leads.map(({ lead: id, role }) => [id, role]))).toEqual(
      Object.fromEntries(Object.entries(right).filter(([name]) => name !== 'state')),
    );
  });

  it('is named with the one that it disagrees with', () => {
    const { evidence } = sortThrough(fourAndBare);
    const tap = evidence.readings.find(({ ask }) => ask.kind === 'tap' && ask.coil === 'a');
    if (tap?.seen.kind !== 'tap' || tap.ask.kind !== 'tap') throw new Error('no tap was asked for');
    // The same tap once more, with the probes as they were, swings the other way.
    const other = reading(99, tap.ask, {
      kind: 'tap',
      swing: tap.seen.swing === 'plus' ? 'minus' : 'plus',
    });
    const ohms = evidence.readings.filter(({ ask }) => ask.kind !== 'tap');
    const { contradiction } = sortLeads({ ...evidence, readings: [...ohms, tap, other] });
    expect([...(contradiction?.readings ?? [])].sort()).toEqual([tap.id, other.id].sort());
  });

  it('is not seen where there is none', () => {
    expect(sortThrough(fourAndBare).sorting.contradiction).toBeNull();
  });
});

describe('what is told of the pickup', () => {
  it.each([
    [[lead('red')], 'a pickup to sort has 2 to 6 leads, got 1'],
    [
      [lead('red'), { id: 'red2', colour: 'red', what: 'wire' } as const],
      'two leads are called "red lead": give one of them a mark, such as striped or knotted',
    ],
  ])('must be sortable', (leads, sentence) => {
    expect(() =>
      sortLeads({
        seen: { coils: 2, leads, plate: true, cover: false },
        meter,
        readings: [],
        refused: [],
      }),
    ).toThrow(sentence);
  });
});
