/** One coil as joined: the sign of its tap at hot against ground (steel pulled off), and the pole of its top by compass. */
export interface TappedCoil {
  readonly tap: 1 | -1;
  /** +1 north, -1 south. */
  readonly pole: 1 | -1;
}

export interface Match {
  /** Whether the second pickup's hot and ground must be exchanged for its signal to add. */
  readonly turn: boolean;
  /** Share of the hum of one coil that is left, per coil, when both play together in phase: 0 cancels, 1 adds in full. */
  readonly hum: number;
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
  const windings = [
    ...first.map(({ tap, pole }) => tap * pole),
    ...second.map(({ tap, pole }) => (turn ? -1 : 1) * tap * pole),
  ];
  const hum = Math.abs(windings.reduce((sum, one) => sum + one, 0)) / windings.length;
  return { turn, hum, cancelsHum: hum === 0 };
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
