import { startingWirings } from '../../src/circuit/catalog/index.ts';
import type { WiringDraft } from '../../src/notebook/draft.ts';
import { MOST_PHOTOS, type Photo } from '../../src/notebook/photo.ts';

/** A drawing with every kind of act that leaves its wiring whole, done and taken back. */
export function draft(): WiringDraft {
  const circuit = startingWirings[3]!.build();
  const lead = circuit.leads[0]!.id;
  const part = circuit.parts[0]!.id;
  const start = { circuit, places: { jack: { x: 12, y: -6, turn: 180 } } } as const;
  return {
    format: 'lugwise-draft',
    id: 'draft-1',
    title: 'The blue one',
    access: 'open',
    changedAt: '2026-03-01T18:00:00Z',
    start,
    done: [
      { do: 'entitle', title: 'Another' },
      { do: 'colour', lead, colour: 'red' },
      { do: 'place', part, place: { x: 40, y: 50, turn: 90 } },
    ],
    undone: [{ do: 'cut', lead }, { do: 'tidy' }, { do: 'rename', thing: part, title: 'Coil' }],
    now: start,
  };
}

/** As small as a photo may be, with the first bytes of a JPEG file. */
export function photo(): Photo {
  const data = new Uint8Array(64).map((_, at) => (at * 31) % 256);
  data.set([0xff, 0xd8, 0xff, 0xe0]);
  const { edge } = MOST_PHOTOS;
  const words = 'the jack';
  const at = '2026-03-01T18:09:00Z';
  return { id: 'p1', job: 'job-1', words, at, width: edge, height: 480, bytes: 64, data };
}
