import type { Circuit, LugRef } from '../../circuit/circuit.ts';
import type { NodeName } from '../../circuit/edit.ts';
import { EVERYWHERE } from '../../circuit/edit.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import type { Ask } from '../../readings/reading.ts';
import { drawingWords } from '../../words/en/drawings.ts';
import { jointOf, lugOfNode, partOf, splitLug } from './names.ts';
import type { Subject } from './portrait.ts';
import { subjectOf } from './subject.ts';

/** One thing to be drawn for an ask, before it has a place: who is seen, which probes and tools go to it. */
export interface Plan {
  /** A part as it lies; its knob from the front; or the jack with a cable in, for listening. */
  readonly view: 'part' | 'knob' | 'plugged';
  readonly subject: Subject;
  readonly nodes: { red?: NodeName; black?: NodeName };
  readonly tool: boolean;
  /** Drawn as the free plug of the cable. */
  readonly plug: boolean;
  /** Lugs that are the same points as the plug's, to be drawn strong without probes. */
  readonly echo: readonly LugRef[];
}

/** Which parts have to be drawn for an ask, in the order in which they are shown. */
export function plansFor(circuit: Circuit, ask: Ask): Plan[] {
  const plans = new Map<string, Plan>();
  const add = (subject: Subject, more: Partial<Plan> = {}): void => {
    const known = plans.get(subject.key);
    plans.set(subject.key, {
      view: 'part',
      subject,
      tool: false,
      plug: false,
      echo: [],
      ...known,
      ...more,
      nodes: { ...known?.nodes, ...more.nodes },
    });
  };
  if (ask.kind === 'listen' || ask.kind === 'hum') {
    const jack = circuit.parts.find((part) => part.kind === 'jack');
    add(
      { key: 'plugged', title: drawingWords().outputJack, parts: jack ? [jack] : [] },
      { view: 'plugged' },
    );
    return [...plans.values()];
  }
  const toolAt = toolPart(circuit, ask);
  if (ask.kind === 'touch' || ask.kind === 'look' || ask.kind === 'pole') {
    add(subjectOf(circuit, toolAt ?? ''), { tool: true });
    return [...plans.values()];
  }
  if (ask.kind === 'tap' && toolAt) add(subjectOf(circuit, toolAt), { tool: true });
  const partAt = (node: NodeName) => splitLug(lugOfNode(circuit, node)).part;
  const plug = viaPlug(circuit, ask.setting.plug, ask.red, ask.black);
  for (const probe of ['red', 'black'] as const) {
    const node = ask[probe];
    const subject = subjectOf(circuit, partAt(node));
    if (plug) add({ ...subject, key: 'plug' }, { plug: true, nodes: { [probe]: node } });
    else add(subject, { nodes: { [probe]: node } });
  }
  if (plug && ask.kind !== 'tap' && ask.kind !== 'turn')
    add(subjectOf(circuit, partAt(ask.red)), { echo: [ask.red, ask.black] });
  if (ask.kind === 'flex' && toolAt) add(subjectOf(circuit, toolAt), { tool: true });
  if (ask.kind === 'turn') {
    const pot = partOf(circuit, ask.pot);
    add({ key: `knob ${ask.pot}`, title: ask.pot, parts: pot ? [pot] : [] }, { view: 'knob' });
  }
  // A flexed wire beside the plug says enough without the jack's lugs.
  if (plans.size > 2)
    for (const [key, plan] of plans) if (plan.echo.length > 0 && !plan.tool) plans.delete(key);
  return [...plans.values()];
}

/** Tip and sleeve, with a cable in the jack: the probes go to the cable's other plug. */
function viaPlug(circuit: Circuit, plug: 'in' | 'out', red: NodeName, black: NodeName): boolean {
  const isJackLug = (node: NodeName) => {
    const { part, lug } = splitLug(node);
    return partOf(circuit, part)?.kind === 'jack' && (lug === 'tip' || lug === 'sleeve');
  };
  return plug === 'in' && red !== black && isJackLug(red) && isJackLug(black);
}

/** The part at which the person's other tool is used. */
export function toolPart(circuit: Circuit, ask: Ask): PartId | undefined {
  switch (ask.kind) {
    case 'tap':
    case 'pole':
      return ask.coil;
    case 'touch':
      return splitLug(ask.metal).part;
    case 'look':
      return siteParts(circuit, ask.at).part;
    case 'flex': {
      if (ask.site === EVERYWHERE) return undefined;
      const parts = siteParts(circuit, ask.site);
      const lugs = [lugOfNode(circuit, ask.red), lugOfNode(circuit, ask.black)];
      const here = lugs.find((lug) => parts.ends.includes(lug));
      return here ? splitLug(here).part : parts.part;
    }
    default:
      return undefined;
  }
}

/** The part a site belongs to; for a wire the part at its `to` end, which can be reached in every kind of lead. */
function siteParts(circuit: Circuit, site: string): { part: PartId; ends: LugRef[] } {
  const joint = jointOf(circuit, site);
  if (joint) return { part: splitLug(joint.lug).part, ends: [joint.lug] };
  const lead = circuit.leads.find((candidate) => candidate.id === site);
  if (lead) return { part: splitLug(lead.to).part, ends: [lead.to, lead.from] };
  return { part: splitLug(site.split(':')[0] ?? site).part, ends: [] };
}
