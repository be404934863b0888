import type { NodeName } from './edit.ts';
import type { Layout } from './netlist.ts';

/** How far the guitar must be opened before a probe can stand there. */
export type Reach = 'outside' | 'cavity' | 'pickup-out' | 'never';

const partIn = (lug: string): string => lug.slice(0, lug.indexOf('.'));

/** The jack counts as outside: a plug reaches it. */
export function reachOf(layout: Layout, node: NodeName): Reach {
  const at = node.indexOf('@');
  if (at >= 0) {
    const lead = layout.circuit.leads.find((one) => one.id === node.slice(0, at));
    if (!lead || lead.kind === 'mount') return 'never';
    // Where a pickup's inner joint sits on a coil, it is as deep in the pickup as that coil's own end.
    const inside = lead.kind === 'pickup' && layout.parts.get(partIn(lead.to))?.kind === 'coil';
    if (inside && node.endsWith('@to')) return reachOf(layout, lead.to);
    return lead.kind === 'wire' || node.endsWith('@to') ? 'cavity' : 'never';
  }
  const part = layout.parts.get(partIn(node));
  switch (part?.kind) {
    case 'jack':
      return 'outside';
    case 'metal':
      if (part.outside) return 'outside';
      return part.role === 'plate' || part.role === 'cover' ? 'pickup-out' : 'cavity';
    case 'coil':
      return part.ends === 'eyelets' ? 'pickup-out' : 'never';
    case 'pot':
      return node.endsWith('.inside') ? 'never' : 'cavity';
    case 'capacitor':
    case 'resistor':
      // The body end of a leg and the leg's bare end are one piece of metal; the bare end is offered.
      return 'never';
    case undefined:
      return 'never';
    default:
      return 'cavity';
  }
}
