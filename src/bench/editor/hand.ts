import type { JointId, LeadId, LugRef } from '../../circuit/circuit.ts';
import type { PartId } from '../../circuit/parts/part.ts';

/** What the person holds: it says what the next tap on a lug, or beside the parts, does. */
export type Hand =
  | { readonly is: 'free' }
  /** A lead that starts here: the next lug is its other end. */
  | { readonly is: 'lead'; readonly from: LugRef }
  /** An end that was unsoldered: the next lug takes it. */
  | { readonly is: 'end'; readonly joint: JointId }
  /** A part: the next tap puts it down. */
  | { readonly is: 'part'; readonly part: PartId };

/** What lies open beside the drawing. */
export type Open =
  | { readonly is: 'nothing' }
  | { readonly is: 'tray' }
  | { readonly is: 'list' }
  | { readonly is: 'warnings' }
  | { readonly is: 'finish' }
  | { readonly is: 'part'; readonly part: PartId }
  | { readonly is: 'lead'; readonly lead: LeadId };
