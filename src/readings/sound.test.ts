import { describe, expect, it } from 'vitest';
import type { Edit } from '../circuit/edit.ts';
import { ohms } from '../circuit/units.ts';
import { usualLoad } from './audio.ts';
import { Guitar } from './guitar.fixture.ts';
import { responseOf } from './response.ts';
import { electricHum, soundOf } from './sound.ts';

const one = new Guitar('one-single-two-knobs');
const coil = one.circuit.parts.find(({ kind }) => kind === 'coil')!.id;
const tone = one.circuit.parts.find((part) => part.kind === 'pot' && part.role === 'tone')!.id;
const volume = one.circuit.parts.find((part) => part.kind === 'pot' && part.role === 'volume')!.id;
const hertz = Float64Array.of(100, 400, 1600, 4000);

/** Decibels below a coil's own EMF at 100, 400, 1600 and 4000 Hz. */
function curve(guitar: Guitar, edits: readonly Edit[], knobs: Record<string, number> = {}) {
  const { real, imaginary } = responseOf(
    guitar.view(guitar.at(undefined, knobs), edits),
    hertz,
    usualLoad,
  );
  return [...real].map((re, at) => 20 * Math.log10(Math.hypot(re, imaginary[at]!)));
}
const open: readonly Edit[] = [{ op: 'open', site: `${coil}:winding` }];

// A fact of the trade (read in repair threads): an open coil still passes thin treble, and the tone knob then acts as a volume.
describe('an open coil', () => {
  it('still passes treble, and hardly any bass', () => {
    const [bass, , , treble] = curve(one, open) as [number, number, number, number];
    const [healthyBass, , , healthyTreble] = curve(one, []) as [number, number, number, number];
    expect(healthyBass).toBeGreaterThan(-1);
    expect(treble - healthyTreble).toBeGreaterThan(-45);
    expect(bass - healthyBass).toBeLessThan(-40);
    expect(treble - bass).toBeGreaterThan(12);
  });

  it('makes a volume of the tone knob: all that is left goes down alike, where a healthy guitar keeps its bass', () => {
    const fall = (edits: readonly Edit[]) => {
      const [up, down] = [curve(one, edits), curve(one, edits, { [tone]: 0 })];
      return up.map((level, at) => level - down[at]!);
    };
    const [healthyBass, , , healthyTreble] = fall([]) as [number, number, number, number];
    expect(Math.abs(healthyBass)).toBeLessThan(1);
    expect(healthyTreble).toBeGreaterThan(20);
    // Of the bass hardly anything was there; what is heard, from 400 Hz up, is as good as gone.
    const [bass, ...rest] = fall(open);
    expect(bass).toBeGreaterThan(6);
    for (const decibels of rest) expect(decibels).toBeGreaterThan(20);
  });

  it('of two in series leaves the other one thin, through its own capacitance', () => {
    const two = new Guitar('one-humbucker-one-knob');
    const dead = two.circuit.pickups[0]!.coils[0]!;
    const [bass, , , treble] = curve(two, [{ op: 'open', site: `${dead}:winding` }]) as number[];
    expect(treble! - bass!).toBeGreaterThan(6);
  });
});

// Physics: each half lies under strings of its own, so nothing of a string is there to cancel; the room drives both halves.
describe('a half of a split pickup that is the wrong way round', () => {
  it('leaves every string as loud as before, and makes it hum', () => {
    const split = new Guitar('four-strings-split-pickup');
    const half = split.circuit.pickups[0]!.coils[0]!;
    const turned: readonly Edit[] = [{ op: 'exchange', lugs: [`${half}.start`, `${half}.finish`] }];
    const [healthy, reversed] = [[], turned].map((edits) =>
      soundOf(split.view(split.at(), edits), null),
    );
    expect(reversed!.level / healthy!.level).toBeCloseTo(1, 1);
    expect(reversed!.magnetic / healthy!.magnetic).toBeGreaterThan(10);
  });
});

describe('resonance', () => {
  // Common practice, no source: a single coil with pots and cable lies at 2 to 5 kHz, a two-coil pickup at 1.5 to 3.5 kHz.
  it.each([
    ['one-single-two-knobs', 2000, 5000],
    ['one-humbucker-one-knob', 1500, 3500],
  ])('of %s lies between %d and %d Hz', (id, low, high) => {
    const guitar = new Guitar(id);
    const swept = Float64Array.from({ length: 400 }, (_, at) => 200 * 100 ** (at / 399));
    const { real, imaginary } = responseOf(guitar.view(guitar.at()), swept, usualLoad);
    const size = [...real].map((re, at) => Math.hypot(re, imaginary[at]!));
    const peak = swept[size.indexOf(Math.max(...size))]!;
    expect(peak).toBeGreaterThan(low);
    expect(peak).toBeLessThan(high);
    // With more cable it falls.
    const longer = responseOf(guitar.view(guitar.at()), swept, { ...usualLoad, farads: 2e-9 });
    const sizes = [...longer.real].map((re, at) => Math.hypot(re, longer.imaginary[at]!));
    expect(swept[sizes.indexOf(Math.max(...sizes))]!).toBeLessThan(0.8 * peak);
  });
});

describe('what turning down does', () => {
  it('takes treble with it: a volume at half is duller than at full', () => {
    const [full, half] = [curve(one, []), curve(one, [], { [volume]: 5 })];
    const balance = (levels: readonly number[]) => levels[3]! - levels[0]!;
    expect(balance(half)).toBeLessThan(balance(full) - 3);
  });
});

describe('hum', () => {
  const three = new Guitar('three-singles-five-position');
  const sound = (
    position: string,
    edits: readonly Edit[] = [],
    touched: string | null = 'strings.metal',
  ) => soundOf(three.view({ ...three.at(position), plug: 'in' }, edits), touched);
  it('cancels where two coils of opposite winding sense are on, not where one is', () => {
    expect(sound('2').magnetic).toBeLessThan(0.02 * sound('1').magnetic);
  });
  it('of the room falls with a hand on grounded strings, and not on floating ones', () => {
    expect(sound('1').electric).toBeLessThan(0.7 * sound('1', [], null).electric);
    const lost: readonly Edit[] = [{ op: 'open', site: 'stringGround@to' }];
    expect(sound('1', lost).electric).toBeGreaterThan(0.7 * sound('1', lost, null).electric);
    expect(sound('1', lost).electric).toBeGreaterThan(5 * sound('1').electric);
  });
  it('rises with a hand on strings that are hot', () => {
    const hot: readonly Edit[] = [{ op: 'exchange', lugs: ['jack.tip', 'jack.sleeve'] }];
    expect(sound('1', hot).electric).toBeGreaterThan(4 * sound('1', hot, null).electric);
  });
  it('is hardly changed by a poor ground: 300 ohm are nothing beside the capacitance of a body', () => {
    const poor: readonly Edit[] = [{ op: 'resist', site: 'stringGround@to', ohms: ohms(300) }];
    expect(sound('1', poor).electric / sound('1').electric).toBeCloseTo(1, 1);
  });
});

describe('hum of electric fields by itself', () => {
  it('is what the whole sound has of it, whatever is touched and broken', () => {
    const torn: readonly Edit[] = [{ op: 'open', site: 'stringGround' }];
    for (const edits of [[], open, torn])
      for (const touched of [null, 'strings.metal']) {
        const view = one.view(one.at(), edits);
        expect(electricHum(view, touched)).toBe(soundOf(view, touched).electric);
      }
    // It differs with the hand, so that the equality says something.
    const view = one.view(one.at(), torn);
    expect(electricHum(view, 'strings.metal')).not.toBeCloseTo(electricHum(view, null), 12);
  });
});
