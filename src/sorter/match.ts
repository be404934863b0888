/** One coil as joined: the sign of its tap at hot against ground (steel pulled off), and the pole of its top by compass. */
export interface TappedCoil {
  readonly tap: 1 | -1;
  /** +1 north, -1 south; null where no compass told. */
  readonly pole: 1 | -1 | null;
}

export interface Match {
  /** Whether the second pickup's hot and ground must be exchanged for its signal to add. */
  readonly turn: boolean;
  /** Share of the hum of one coil that is left, per coil, when both play together in phase: 0 cancels, 1 adds in full; null where a pole is not known. */
  readonly hum: number | null;
  readonly cancelsHum: boolean;
}

/**
 * Two pickups played together. Each lists its coils that play, joined so that they add. By Faraday's law the signal has the sign of winding
 * sense x pole, which the tap shows, and hum has the sign of the winding sense alone, which is tap x pole.
 * Throws RangeError where a pickup has no coil, or coils that fight each other.
 */
export function match(first: readonly TappedCoil[], second: readonly TappedCoil[]): Match {
  const [x, y] = [signOf(first, 'first'), signOf(second, 'second')];
  const turn = x !== y;
  const hum = humOf([
    ...first,
    ...second.map(({ tap, pole }) => ({ tap: (turn ? -tap : tap) as 1 | -1, pole })),
  ]);
  return { turn, hum, cancelsHum: hum === 0 };
}

/** What is left of the hum of coils that play as they are; see `Match`. */
export function humOf(coils: readonly TappedCoil[]): number | null {
  let sum = 0;
  for (const { tap, pole } of coils) {
    if (pole === null) return null;
    sum += tap * pole;
  }
  return Math.abs(sum) / coils.length;
}

function signOf(coils: readonly TappedCoil[], which: string): 1 | -1 {
  const [coil] = coils;
  if (!coil) throw new RangeError(`the ${which} pickup has no coil to match`);
  if (coils.some(({ tap }) => tap !== coil.tap))
    throw new RangeError(
      `the coils of the ${which} pickup fight each other: join them so that their taps agree first`,
    );
  return coil.tap;
}
