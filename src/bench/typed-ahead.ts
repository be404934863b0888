import type { Work } from '../flows/index.ts';
import { parseFarads, parseOhms } from '../readings/entry.ts';
import type { Ask, Seen } from '../readings/reading.ts';
import type { Ports } from './ports.ts';
import { toldOf } from './told.ts';

/** After a key, milliseconds: the display shows it first. Half a figure is left as soon as the next key comes, so little is lost by it. */
const PAUSE = 40;

/** Has the engine work out what would follow from a figure while it stands in the display, so that it is there by Enter. */
export function typedAhead({ engine }: Pick<Ports, 'engine'>) {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const forget = () => clearTimeout(timer);
  return {
    forget,
    typed(work: Work, ask: Ask, text: string): void {
      forget();
      timer = setTimeout(() => {
        const seen = seenAs(ask, text);
        if (seen) engine.foresee(afterwards(work, ask, seen));
      }, PAUSE);
    },
  };
}

function afterwards(work: Work, ask: Ask, seen: Seen) {
  const told = toldOf(work);
  const reading = { id: 'typed', ask, seen, at: '', round: work.repairs.length };
  return { ...told, readings: [...told.readings, reading] };
}

/** A single figure; sums are worked out when they are entered. */
function seenAs({ kind }: Ask, text: string): Seen | null {
  if (kind === 'ohms') {
    const entry = parseOhms(text);
    return entry.ok ? { kind, ohms: entry.ohms } : null;
  }
  if (kind === 'farads') {
    const entry = parseFarads(text);
    return entry.ok ? { kind, farads: entry.farads } : null;
  }
  return null;
}
