import type { Setting } from '../circuit/circuit.ts';
import type { Edit } from '../circuit/edit.ts';
import type { Layout } from '../circuit/netlist.ts';
import { settingKey } from '../circuit/setting.ts';
import { type Wired, wire } from '../circuit/wired.ts';
import { type DcSolution, solveDc, withBranch, withResistance } from '../solver/index.ts';

/** One guitar as it is (intended wiring plus edits) in one setting, solved when first asked. Every kind of reading is predicted from it. */
export class View {
  readonly layout: Layout;
  readonly setting: Setting;
  readonly edits: readonly Edit[];
  private made: Wired | undefined;
  private solved: DcSolution | undefined;
  private readonly siblings: Map<string, View>;

  constructor(
    layout: Layout,
    setting: Setting,
    edits: readonly Edit[],
    siblings: Map<string, View> = new Map(),
  ) {
    this.layout = layout;
    this.setting = setting;
    this.edits = edits;
    this.siblings = siblings;
    siblings.set(settingKey(setting), this);
  }

  get wired(): Wired {
    this.made ??= wire(this.layout, this.setting, this.edits);
    return this.made;
  }

  get dc(): DcSolution {
    const { wired } = this;
    this.solved ??=
      lowRank(this) ??
      solveDc({ nodes: wired.nodeCount, a: wired.a, b: wired.b, ohms: wired.ohms });
    return this.solved;
  }

  /** The same guitar in another setting, wired and solved once. */
  in(setting: Setting): View {
    return (
      this.siblings.get(settingKey(setting)) ??
      new View(this.layout, setting, this.edits, this.siblings)
    );
  }

  /** How many settings of this guitar are remembered. */
  get remembered(): number {
    return this.siblings.size;
  }
}

const intended = new WeakMap<Layout, Map<string, DcSolution>>();

function intendedIn({ layout, setting }: View): DcSolution {
  const known = intended.get(layout) ?? new Map<string, DcSolution>();
  intended.set(layout, known);
  const key = settingKey(setting);
  const found = known.get(key);
  if (found) return found;
  const { nodeCount, a, b, ohms } = wire(layout, setting, []);
  const solution = solveDc({ nodes: nodeCount, a, b, ohms });
  known.set(key, solution);
  return solution;
}

/** Branches changed beyond which solving anew is cheaper. */
const FEW = 4;

/**
 * The solution as low-rank edits of the intended wiring's, or null where it cannot be had so: an ideal connection that is cut
 * or moved splits a merged point, and a cut that leaves only a far weaker path would be lost in rounding.
 */
function lowRank(view: View): DcSolution | null {
  const { edits, layout, wired } = view;
  const movesEnds = edits.some(({ op }) => op === 'land' || op === 'exchange' || op === 'stick');
  if (movesEnds) return null;
  const base = intendedIn(view);
  let solution = base;
  const own = layout.sites.length;
  for (let at = own; at < wired.ohms.length; at += 1) {
    const ohms = wired.ohms[at] as number;
    if (ohms === 0) return null;
    solution = withBranch(solution, wired.a[at] as number, wired.b[at] as number, ohms);
  }
  let changed = 0;
  for (let at = 0; at < own; at += 1) {
    const before = base.network.ohms[at] as number;
    const after = wired.ohms[at] as number;
    if (before === after) continue;
    changed += 1;
    if (changed > FEW || before === 0 || before === Number.POSITIVE_INFINITY || after === 0)
      return null;
    const edited = withResistance(solution, at, after);
    if (edited === null) return null;
    solution = edited;
  }
  return solution;
}
