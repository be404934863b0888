import type { Circuit, Lead, LeadId, LeadKind, LugRef } from '../../circuit.ts';
import type { Part } from '../../parts/part.ts';

/** A copy of a wiring while it is changed: parts come, leads move and come, and every new name is one of its own. */
export class Draft {
  private readonly from: Circuit;
  private parts: Part[];
  private leads: Lead[];

  constructor(circuit: Circuit) {
    this.from = circuit;
    this.parts = [...circuit.parts];
    this.leads = [...circuit.leads];
  }

  /** The name itself where it is free, else with the lowest number that makes it so. */
  fresh(name: string): string {
    const taken = new Set([...this.parts, ...this.leads, ...this.from.pickups].map(({ id }) => id));
    // Names have at most 40 characters; two are kept for the number.
    const short = name.slice(0, 38);
    let free = short;
    for (let number = 2; taken.has(free); number += 1) free = `${short}${number}`;
    return free;
  }

  /** Adds a part under a fresh name made of its id; returns it as it now stands. */
  add<P extends Part>(part: P): P {
    const named = { ...part, id: this.fresh(part.id) };
    this.parts.push(named);
    return named;
  }

  change(id: string, to: (part: Part) => Part): void {
    this.parts = this.parts.map((part) => (part.id === id ? to(part) : part));
  }

  join(name: string, from: LugRef, to: LugRef, kind: LeadKind = 'wire'): LeadId {
    const id = this.fresh(name);
    this.leads.push({ id, kind, from, to });
    return id;
  }

  /** Solders the far end of a lead to another lug. */
  land(id: LeadId, to: LugRef): void {
    this.leads = this.leads.map((lead) => (lead.id === id ? { ...lead, to } : lead));
  }

  /** Solders the near end of a wire to another lug. */
  start(id: LeadId, from: LugRef): void {
    this.leads = this.leads.map((lead) => (lead.id === id ? { ...lead, from } : lead));
  }

  /** Moves every lead end from one lug to another. */
  move(from: LugRef, to: LugRef): void {
    const at = (lug: LugRef) => (lug === from ? to : lug);
    this.leads = this.leads.map((lead) => ({ ...lead, from: at(lead.from), to: at(lead.to) }));
  }

  /** What is soldered on one lug sits on the other, and the other way round. */
  exchange(one: LugRef, other: LugRef): void {
    const at = (lug: LugRef) => (lug === one ? other : lug === other ? one : lug);
    this.leads = this.leads.map((lead) => ({ ...lead, from: at(lead.from), to: at(lead.to) }));
  }

  done(): Circuit {
    return { ...this.from, parts: this.parts, leads: this.leads };
  }
}
