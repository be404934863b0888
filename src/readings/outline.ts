import type { Setting } from '../circuit/circuit.ts';
import type { Edit, NodeName } from '../circuit/edit.ts';
import { type Layout, nodeAt } from '../circuit/netlist.ts';
import { Drawn } from './drawn.ts';
import { type Frame, frameOf, type Shape, type Skeleton, shapeOf } from './frame.ts';
import type { Loose } from './level.ts';

/**
 * What of a guitar two probes can see. Most faults change nothing between most points, so thousands of suspects are a few guitars
 * to one reading: an outline names what lies between two points, and guitars of the same name need to be solved once.
 *
 * Names are equal only where the parts between the points, how they are joined and every edit of their values are equal; that holds
 * between guitars of one layout in one setting. Two names may differ and yet foretell the same.
 */
export interface Outline {
  /** What direct current finds on its way from one point to another; `OPEN` where nothing leads across, `ONE` for one point. */
  between(from: NodeName, to: NodeName): string;
  /** Equal for guitars whose lugs are joined alike, values included: nothing but the ends of leads tells them apart. */
  readonly whole: string;
}

/** Outlines of one guitar (a layout and the edits of its suspect) over its settings. */
export class Outlines {
  readonly layout: Layout;
  readonly edits: readonly Edit[];
  private readonly loose: Loose | undefined;
  private readonly stuck: Readonly<Record<string, string>> | null;
  private readonly stuckSettings = new Map<number, Setting>();
  private readonly frames = new Map<string, Frame>();
  private readonly traced = new Map<Setting, Traced>();

  constructor(layout: Layout, edits: readonly Edit[], loose?: Loose) {
    this.layout = layout;
    this.edits = edits;
    this.loose = loose;
    const stuck = edits.flatMap((edit) =>
      edit.op === 'stick' ? [[edit.part, edit.position] as const] : [],
    );
    this.stuck = stuck.length > 0 ? Object.fromEntries(stuck) : null;
  }

  in(setting: Setting): Outline {
    const known = this.traced.get(setting);
    if (known) return known;
    const made = this.trace(setting);
    // A position is listened to once, but probed in a hundred places.
    if (setting.plug === 'out') this.traced.set(setting, made);
    return made;
  }

  private trace(setting: Setting): Traced {
    let shape = shapeOf(this.layout, setting);
    if (this.stuck) {
      const known = this.stuckSettings.get(shape.id);
      const held = known ?? {
        ...setting,
        positions: { ...setting.positions, ...this.stuck },
      };
      this.stuckSettings.set(shape.id, held);
      shape = shapeOf(this.layout, held);
    }
    const lifted = setting.lifted.join();
    const frame =
      this.frames.get(lifted) ?? frameOf(this.layout, this.edits, this.loose, setting.lifted);
    this.frames.set(lifted, frame);
    return new Traced(this.layout, frame, shape, setting.plug === 'out');
  }
}

/** A skeleton in one shape, drawn when it is first looked at, with the lead ends of one guitar. */
class Traced implements Outline {
  private readonly layout: Layout;
  private readonly frame: Frame;
  private readonly shape: Shape;
  private readonly kept: boolean;
  private made: Drawn | undefined;

  /** `kept`: it will be asked again. */
  constructor(layout: Layout, frame: Frame, shape: Shape, kept: boolean) {
    this.layout = layout;
    this.frame = frame;
    this.shape = shape;
    this.kept = kept;
  }

  between(from: NodeName, to: NodeName): string {
    this.made ??= this.drawn();
    return this.made.path(this.net(from), this.net(to));
  }

  get whole(): string {
    return `${this.frame.skeleton.number}.${this.shape.id}`;
  }

  private net(node: NodeName): number {
    return this.frame.netOf[nodeAt(this.layout, node)] as number;
  }

  private drawn(): Drawn {
    const { layout, shape, kept } = this;
    const { skeleton } = this.frame;
    const drawings = drawingsOf(skeleton);
    if (drawings.latest?.shape === shape) return drawings.latest.drawn;
    const drawn = drawings.kept.get(shape.id) ?? new Drawn(layout, skeleton, shape);
    if (kept) drawings.kept.set(shape.id, drawn);
    drawings.latest = { shape, drawn };
    return drawn;
  }
}

interface Drawings {
  /** By the number of a shape. */
  readonly kept: Map<number, Drawn>;
  /** The last one, whether it is kept or not. */
  latest: { readonly shape: Shape; readonly drawn: Drawn } | null;
}
const drawings = new WeakMap<Skeleton, Drawings>();

function drawingsOf(skeleton: Skeleton): Drawings {
  const known = drawings.get(skeleton) ?? { kept: new Map(), latest: null };
  drawings.set(skeleton, known);
  return known;
}
