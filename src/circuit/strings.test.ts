import { describe, expect, it } from 'vitest';
import { startingWirings } from './catalog/index.ts';
import { coilsByString } from './strings.ts';

const built = (id: string) => startingWirings.find((one) => one.id === id)!.build();

describe('coils that hear one string', () => {
  it('are all coils where no pickup is in halves', () => {
    expect(coilsByString(built('one-humbucker-one-knob'))).toEqual([['bridgeScrew', 'bridgeSlug']]);
  });

  it('are one half and every other pickup where one is', () => {
    expect(coilsByString(built('four-strings-split-and-single'))).toEqual([
      ['neckLowHalf', 'bridgeCoil'],
      ['neckHighHalf', 'bridgeCoil'],
    ]);
    expect(coilsByString(built('four-strings-two-split-pickups'))).toEqual([
      ['neckLowHalf', 'bridgeLowHalf'],
      ['neckHighHalf', 'bridgeHighHalf'],
    ]);
  });
});
