import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import type { PartId } from '../../src/circuit/parts/part.ts';
import {
  type AllPairs,
  allPairs,
  bareEndsOf,
  lugsOf,
  type Probes,
  resistancesOfMany,
  type SpiceNetlist,
  spiceNetlist,
  tapTransfer,
} from '../oracle/index.ts';
import { canonical } from './canonical.ts';
import { Dice } from './dice.ts';

export interface BenchOptions {
  /** Standard deviation of a knob set by eye, in figures of its dial of 0 to 10. */
  readonly knobDeviation: number;
  /** Share of the track that stays at each end, by pot, where it is not the stated 0.1 %. */
  readonly endOhms?: Readonly<Record<PartId, number>>;
}

/** The guitar on the bench, in truth: real values, faults, and where its knobs really stand. All physics comes from the oracle. */
export class Bench {
  readonly circuit: Circuit;
  readonly edits: readonly Edit[];
  private readonly seed: string;
  private readonly knobDeviation: number;
  private readonly endOhms: Readonly<Record<PartId, number>>;
  private readonly pairs = new Map<string, AllPairs>();
  private readonly through = new Map<string, number[]>();
  private readonly transfers = new Map<string, number>();

  constructor(
    circuit: Circuit,
    edits: readonly Edit[],
    seed: string,
    { knobDeviation, endOhms = {} }: BenchOptions,
  ) {
    this.endOhms = endOhms;
    this.circuit = circuit;
    this.edits = edits;
    this.seed = seed;
    this.knobDeviation = knobDeviation;
  }

  /** Ends are ends; anything between is set by eye, and set alike each time it is asked alike. */
  private asSet(setting: Setting): Setting {
    const knobs = Object.fromEntries(
      Object.entries(setting.knobs).map(([pot, figure]) => {
        if (figure <= 0 || figure >= 10) return [pot, figure];
        const off = this.knobDeviation * new Dice(`${this.seed} knob ${pot} ${figure}`).normal();
        return [pot, Math.min(10, Math.max(0, figure + off))];
      }),
    );
    return { ...setting, knobs };
  }

  /** Solves settings that will be asked about in one run of the simulator. */
  prepare(settings: readonly Setting[]): void {
    const open = new Map(
      settings.map((setting) => [canonical([setting, this.edits]), setting] as const),
    );
    const left = [...open].filter(([key]) => !this.pairs.has(key));
    const nodes = [...lugsOf(this.circuit), ...bareEndsOf(this.circuit)];
    const solved = allPairs(left.map(([, setting]) => ({ netlist: this.netlist(setting), nodes })));
    left.forEach(([key], at) => {
      this.pairs.set(key, solved[at]!);
    });
  }

  netlist(setting: Setting, edits: readonly Edit[] = this.edits): SpiceNetlist {
    return spiceNetlist(this.circuit, this.asSet(setting), edits, {
      endOhms: this.endOhms,
    });
  }

  /** Real ohms between two points, `Infinity` when open. Every pair of a setting is solved at the first question about it. */
  ohms(setting: Setting, [red, black]: Probes, edits: readonly Edit[] = this.edits): number {
    const key = canonical([setting, edits]);
    let pairs = this.pairs.get(key);
    if (!pairs) {
      const nodes = [...lugsOf(this.circuit), ...bareEndsOf(this.circuit)];
      pairs = allPairs([{ netlist: this.netlist(setting, edits), nodes }])[0]!;
      this.pairs.set(key, pairs);
    }
    return pairs.between(red, black);
  }

  /** Ohms between two points in several settings, in one run of the simulator. */
  ohmsThrough(settings: readonly Setting[], probes: Probes): number[] {
    const key = canonical([settings, probes]);
    let through = this.through.get(key);
    if (!through) {
      through = resistancesOfMany(
        settings.map((setting) => ({ netlist: this.netlist(setting), pairs: [probes] })),
      ).map(([ohms]) => ohms!);
      this.through.set(key, through);
    }
    return through;
  }

  /** Volts at the probes per volt of EMF in a coil. */
  transfer(setting: Setting, coil: PartId, [red, black]: Probes): number {
    const key = canonical([setting, coil, red, black]);
    const known = this.transfers.get(key) ?? tapTransfer(this.netlist(setting), coil, red, black);
    this.transfers.set(key, known);
    return known;
  }

  /** +1 north, -1 south, with magnets that a fault turned. */
  magnet(coil: PartId): number {
    const part = this.circuit.parts.find(({ id }) => id === coil);
    if (part?.kind !== 'coil') throw new Error(`${coil} is no coil`);
    const turned = this.edits.filter((edit) => edit.op === 'turn-magnet' && edit.coil === coil);
    return part.magnet * (turned.length % 2 === 0 ? 1 : -1);
  }
}
