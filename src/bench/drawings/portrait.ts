import type { ComponentChildren } from 'preact';
import type { LugRef } from '../../circuit/circuit.ts';
import type { Part } from '../../circuit/parts/part.ts';
import type { Box, Point, Side } from './geometry.ts';

/** Room for one portrait, in drawing units. `scale` enlarges shapes, never text. */
export interface Frame {
  readonly w: number;
  readonly h: number;
  readonly scale: number;
}

/** Where a lug sits in the portrait, which way its leads leave, and where its name stands. */
export interface Spot {
  readonly at: Point;
  readonly radius: number;
  readonly side: Side;
  readonly label: string;
  readonly labelAt: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  /** An eyelet is a ring; a blob is solder on metal; a patch is bare metal. */
  readonly shape: 'eyelet' | 'blob' | 'patch';
  /** Sideways step by which its leads pass the lugs of the row in front, in drawing units. */
  readonly dodge?: number;
  /** Where leads do not start at the spot itself (a coil's start at its edge). */
  readonly leadsHidden?: boolean;
}

/** How the guitar lies, as the person sees it. */
export interface Lie {
  /** The other way: parts are turned by half a turn. */
  readonly turned: boolean;
  /** A left-handed guitar: what lies on the left lies on the right. The parts themselves are the same. */
  readonly leftHanded: boolean;
}
export const USUAL_LIE: Lie = { turned: false, leftHanded: false };

/** One thing as the person sees it. */
export interface Portrait {
  readonly title: string;
  /** "seen from the back". */
  readonly seen: string;
  /** How to count the lugs: "lugs down: 3 2 1". */
  readonly count?: string;
  /** Both in a few words, where room is short. */
  readonly brief?: string;
  /** How to count, where the part lies the other way. */
  readonly turned?: { readonly count: string; readonly brief: string };
  /** Everything but lugs, leads and probes, in light lines. */
  readonly body: ComponentChildren;
  readonly spots: ReadonlyMap<LugRef, Spot>;
}

/** What is drawn as one picture: a pickup with its coils and plate, a pot with the switch on its back, or a part alone. */
export interface Subject {
  readonly key: string;
  /** As in a sentence. */
  readonly title: string;
  readonly parts: readonly Part[];
}

/** Room a label takes. */
export function labelBox(spot: Spot, width: number, size: number): Box {
  const x =
    spot.anchor === 'start'
      ? spot.labelAt.x
      : spot.anchor === 'end'
        ? spot.labelAt.x - width
        : spot.labelAt.x - width / 2;
  return { x, y: spot.labelAt.y - size * 0.8, w: width, h: size };
}
