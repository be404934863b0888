import type { Circuit } from '../../circuit/circuit.ts';
import type { Coil, Metal, Part, PartId } from '../../circuit/parts/part.ts';
import { drawingWords } from '../../words/en/drawings.ts';
import { partOf } from './names.ts';
import type { Frame, Portrait, Subject } from './portrait.ts';
import {
  jackPortrait,
  metalPortrait,
  pickupPortrait,
  potPortrait,
  splicePortrait,
  switchPortrait,
  twoLegsPortrait,
} from './portraits/index.ts';

const isPart = (part: Part | undefined): part is Part => part !== undefined;

/** What is drawn when this part is meant: coils, plate and cover come as their pickup, a carried switch with its pot. */
export function subjectOf(circuit: Circuit, id: PartId): Subject {
  const pickup = circuit.pickups.find(
    (candidate) => candidate.coils.includes(id) || candidate.plate === id || candidate.cover === id,
  );
  if (pickup) {
    const ids = [...pickup.coils, pickup.plate, pickup.cover];
    const parts = ids.map((member) => (member ? partOf(circuit, member) : undefined));
    return { key: pickup.id, title: pickup.title, parts: parts.filter(isPart) };
  }
  const part = partOf(circuit, id);
  if (!part) return { key: id, title: id, parts: [] };
  if (part.kind === 'switch' && part.carrier) return subjectOf(circuit, part.carrier);
  if (part.kind === 'pot') {
    const carried = circuit.parts.find(
      (other) => other.kind === 'switch' && other.carrier === part.id,
    );
    return { key: part.id, title: part.title, parts: carried ? [part, carried] : [part] };
  }
  return { key: part.id, title: part.title, parts: [part] };
}

/** What a subject needs so that its lugs, their names and the ends of its leads keep apart. */
export interface Room {
  /** Drawing units at scale 1. */
  readonly w: number;
  readonly h: number;
  /** Scale when it has the drawing to itself. */
  readonly enlarge: number;
  /** Higher than wide: its title then stands beside it, not above. */
  readonly tall: boolean;
}

export function roomNeeded(subject: Subject): Room {
  const first = subject.parts[0];
  const coils = subject.parts.filter((part) => part.kind === 'coil').length;
  const rows =
    subject.parts.flatMap((part) => (part.kind === 'switch' ? [part.rows] : []))[0] ?? [];
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const w = columns > 5 ? 352 : 172;
  const room = (h: number, enlarge: number, tall = false): Room => ({ w, h, enlarge, tall });
  if (coils > 0) return coils > 1 ? room(180, 1.3) : room(122, 1.6);
  switch (first?.kind) {
    case 'switch':
      if (first.style === 'rotary') return room(184, 1.2, true);
      return rows.length > 1
        ? room(columns > 2 ? 162 : 150, 1.3)
        : room(128, columns > 5 ? 1.3 : 1.6);
    case 'capacitor':
    case 'resistor':
      return room(140, 1.3, true);
    case 'jack':
      return room(158, 1.3, true);
    case 'splice':
    case 'metal':
      return room(152, 1.3, true);
    default:
      return room(184, 1.3, true);
  }
}

/** `strong` names coils to be drawn in ink because the person's tool goes to them. */
export function portraitOf(
  circuit: Circuit,
  subject: Subject,
  frame: Frame,
  strong: ReadonlySet<PartId>,
): Portrait {
  const first = subject.parts[0];
  const pickup = circuit.pickups.find((candidate) => candidate.id === subject.key);
  const coils = subject.parts.filter((part): part is Coil => part.kind === 'coil');
  if (pickup || coils.length > 0) {
    const metal = (id: PartId | undefined): Metal | undefined =>
      subject.parts.find((part): part is Metal => part.kind === 'metal' && part.id === id);
    const plate = metal(pickup?.plate);
    const cover = metal(pickup?.cover);
    const title = pickup?.title ?? first!.title;
    return pickupPortrait(
      { title, coils, ...(plate && { plate }), ...(cover && { cover }) },
      frame,
      strong,
    );
  }
  switch (first?.kind) {
    case 'pot': {
      const carried = subject.parts[1];
      return potPortrait(first, carried?.kind === 'switch' ? carried : undefined, frame);
    }
    case 'switch':
      return switchPortrait(first, frame);
    case 'jack':
      return jackPortrait(first, frame);
    case 'capacitor':
    case 'resistor':
      return twoLegsPortrait(first, frame);
    case 'splice':
      return splicePortrait(first, frame);
    case 'metal':
      return metalPortrait(first, frame);
    default:
      return {
        title: subject.key,
        seen: drawingWords().notInThisWiring,
        body: null,
        spots: new Map(),
      };
  }
}
