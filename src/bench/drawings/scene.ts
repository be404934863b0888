import type { Circuit, JointId, LugRef } from '../../circuit/circuit.ts';
import type { NodeName } from '../../circuit/edit.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import { ended, type Rests } from '../../diagnosis/rests.ts';
import type { Ask } from '../../readings/reading.ts';
import { called } from '../../words/called.ts';
import { commonWords } from '../../words/en/common.ts';
import { drawingWords } from '../../words/en/drawings.ts';
import { type Box, type Point, point } from './geometry.ts';
import { jointOf, lugOfNode, splitLug } from './names.ts';
import { type Plan, plansFor, toolPart } from './plan.ts';
import {
  type Frame,
  type Lie,
  labelBox,
  type Portrait,
  type Subject,
  USUAL_LIE,
} from './portrait.ts';
import { plugPortrait } from './portraits/index.ts';
import { type PlacedProbe, placingProbes } from './probe-place.ts';
import { type Stubs, stubsOf } from './stubs.ts';
import { portraitOf, roomNeeded } from './subject.ts';
import { TEXT, textWidth } from './theme.ts';
import { type Mark, marksFor } from './tool-marks.ts';
import { turnedPortrait } from './turned.tsx';

/** One part of the drawing: a portrait in its own coordinates, or a knob seen from the front, or the plugged-in cable. */
export interface Panel {
  readonly key: string;
  readonly view: Plan['view'];
  readonly frame: Frame;
  /** Title and side seen stand above the drawing, or in a column on its left. */
  readonly head: 'above' | 'beside';
  /** Seen from the other side of the bench. */
  readonly turned: boolean;
  /** A knob whose figures run counter-clockwise. */
  readonly leftHandedKnob: boolean;
  readonly portrait: Portrait;
  readonly stubs: Stubs;
  /** Lugs to be drawn strong. */
  readonly asked: ReadonlySet<LugRef>;
  readonly probes: { readonly red?: PlacedProbe; readonly black?: PlacedProbe };
  /** Probe points on a wire rather than a lug. */
  readonly onWire: readonly { readonly lug: Point; readonly at: Point; readonly lifted: boolean }[];
  readonly marks: readonly Mark[];
}

const emptyStubs: Stubs = { stubs: [], links: [] };
const full = 352;
const half = 172;
const besideTitle = 244;

export interface Framed {
  readonly plan: Plan;
  readonly frame: Frame;
  readonly head: Panel['head'];
}

/** What has to be drawn for an ask, laid out but not yet rendered. Pure. */
export function sceneOf(
  circuit: Circuit,
  ask: Ask,
  lie: Lie = USUAL_LIE,
): readonly (readonly Panel[])[] {
  return ended(sceneInSteps(circuit, ask, lie));
}

/** The same, with rests. */
export function* sceneInSteps(
  circuit: Circuit,
  ask: Ask,
  lie: Lie,
): Rests<readonly (readonly Panel[])[]> {
  const rows: (readonly Panel[])[] = [];
  for (const row of framed(plansFor(circuit, ask), ask.kind)) {
    const panels: Panel[] = [];
    for (const framing of row) {
      yield;
      panels.push(yield* panelInSteps(circuit, ask, framing, lie));
    }
    rows.push(lie.leftHanded !== lie.turned ? panels.reverse() : panels);
  }
  return rows;
}

/** Up to three plans in rows: two share a row where their lugs have room, one has the whole width. */
export function framed(plans: readonly Plan[], kind: Ask['kind']): readonly (readonly Framed[])[] {
  const wide = plans.some((plan) => roomNeeded(plan.subject).w > half);
  const rows: (readonly Plan[])[] =
    plans.length === 2 && !wide
      ? [plans]
      : plans.length === 3 && !wide
        ? [plans.slice(0, 2), plans.slice(2)]
        : plans.map((plan) => [plan]);
  return rows.map((row) => {
    const first = row[0]!;
    const alone = rows.length === 1 && row.length === 1;
    const room = roomNeeded(first.subject);
    const scale = alone ? room.enlarge : 1;
    const head = alone && room.tall && first.view === 'part' && !first.plug ? 'beside' : 'above';
    // A hand reaches below the part.
    const below = kind === 'touch' ? 44 : 0;
    const frame: Frame = {
      w: head === 'beside' ? besideTitle : row.length === 1 ? full : half,
      h: Math.max(...row.map((plan) => heightNeeded(plan, scale))) + below,
      scale,
    };
    return row.map((plan) => ({ plan, frame, head }));
  });
}

function heightNeeded(plan: Plan, scale: number): number {
  if (plan.view === 'knob') return 170 * scale;
  if (plan.view === 'plugged' || plan.plug) return 150;
  return roomNeeded(plan.subject).h * scale + 22 * (scale > 1 ? 0 : 1);
}

/** One plan in its frame, as seen for this ask. */
export function* panelInSteps(
  circuit: Circuit,
  ask: Ask,
  { plan, frame, head }: Framed,
  lie: Lie,
): Rests<Panel> {
  // A plug in the hand lies as it is held.
  const turned = lie.turned && !plan.plug;
  const [first] = plan.subject.parts;
  const leftHandedKnob = first?.kind === 'pot' && first.leftHanded === true;
  const base = { key: plan.subject.key, view: plan.view, frame, head, turned, leftHandedKnob };
  const nothing = {
    stubs: emptyStubs,
    asked: new Set<LugRef>(),
    probes: {},
    onWire: [],
    marks: [],
  };
  if (plan.view !== 'part') {
    const knob = plan.view === 'knob';
    const portrait: Portrait = {
      title: first?.title ?? drawingWords().outputJack,
      seen: knob ? drawingWords().knobFromTheFront : drawingWords().cableInVolumeLow,
      body: null,
      spots: new Map(),
    };
    return { ...base, ...nothing, portrait };
  }
  const strong = new Set<PartId>(
    plan.tool && (ask.kind === 'tap' || ask.kind === 'pole' || ask.kind === 'look')
      ? [toolPart(circuit, ask) ?? '']
      : [],
  );
  const upright =
    plan.plug && first?.kind === 'jack'
      ? plugPortrait(first, frame)
      : portraitOf(circuit, plan.subject, frame, strong);
  const drawn = turned ? turnedPortrait(upright, frame) : upright;
  const nodes = [plan.nodes.red, plan.nodes.black].filter((node) => node !== undefined);
  const site = ask.kind === 'flex' ? ask.site : ask.kind === 'look' ? ask.at : undefined;
  const named = new Set<JointId>([...nodes, ...(site ? [site, `${site}@to`, `${site}@from`] : [])]);
  const asked = new Set<LugRef>([...nodes.map((node) => lugOfNode(circuit, node)), ...plan.echo]);
  const portrait: Portrait = plan.plug
    ? drawn
    : {
        ...drawn,
        title: titleOf(
          plan.subject,
          drawn.title,
          [...asked].map((lug) => splitLug(lug).part),
          strong,
        ),
      };
  yield;
  const stubs = stubsOf(circuit, portrait, frame, ask.setting.lifted, named);
  yield;
  const pointOf = (node: NodeName | undefined): Point | undefined => {
    if (node === undefined) return undefined;
    const joint = jointOf(circuit, node);
    if (joint) {
      const stub = stubs.stubs.find((candidate) => candidate.joint === node);
      const link = stubs.links.find((candidate) => candidate.lead.id === joint.lead.id);
      const at = stub?.onWire ?? link?.onWire[joint.end];
      if (at) return at;
    }
    return portrait.spots.get(lugOfNode(circuit, node))?.at;
  };
  const red = pointOf(plan.nodes.red);
  const black = pointOf(plan.nodes.black);
  const marks = plan.tool ? marksFor(circuit, ask, portrait, stubs, frame, turned) : [];
  if (ask.kind === 'look' && site) {
    const joint = jointOf(circuit, site);
    if (joint) asked.add(joint.lug);
  }
  if (ask.kind === 'touch') asked.add(ask.metal);
  const probes = yield* placingProbes(red, black, {
    discs: [
      ...[...portrait.spots.values()]
        .filter((spot) => spot.at !== red && spot.at !== black)
        .map((spot) => ({ at: spot.at, radius: spot.radius + 7 })),
      ...marks.map((mark) => ({ at: mark.at, radius: 20 })),
    ],
    boxes: [...labelBoxes(portrait), ...stubs.stubs.flatMap((s) => (s.label ? [s.label.box] : []))],
    lines: stubs.stubs.map((stub) => sampled(stub.path)),
    room: { x: -2, y: -6, w: frame.w + 4, h: frame.h + 8 },
  });
  const onWire = nodes.flatMap((node) => {
    const joint = jointOf(circuit, node);
    const lug = joint && portrait.spots.get(joint.lug)?.at;
    const at = joint && pointOf(node);
    const lifted = ask.setting.lifted.includes(node);
    return lug && at ? [{ lug, at, lifted }] : [];
  });
  return { ...base, portrait, stubs, asked, probes, onWire, marks };
}

/** Where one part of several is meant, its own name; where a pot and its switch are, both. */
function titleOf(
  subject: Subject,
  title: string,
  asked: readonly PartId[],
  strong: ReadonlySet<PartId>,
): string {
  const meant = subject.parts.filter(({ id }) => asked.includes(id) || strong.has(id));
  if (subject.parts.length < 2 || meant.length === 0) return title;
  if (meant.length === 1) return called(meant[0]!.title);
  return meant.some(({ kind }) => kind === 'coil')
    ? title
    : commonWords().and(meant.map((part) => called(part.title)));
}

const labelBoxes = (portrait: Portrait): Box[] =>
  [...portrait.spots.values()].map((spot) =>
    labelBox(spot, textWidth(spot.label, TEXT.lug), TEXT.lug),
  );

function sampled(path: readonly Point[]): Point[] {
  return path.slice(1).flatMap((b, i) => {
    const a = path[i]!;
    return [0.2, 0.4, 0.6, 0.8, 1].map((t) => point(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t));
  });
}
