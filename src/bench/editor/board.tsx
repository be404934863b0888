import { useRef } from 'preact/hooks';
import type { Warning } from '../../checks/warning.ts';
import type { LeadId, LugRef } from '../../circuit/circuit.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import { editorWords } from '../../words/en/editor.ts';
import {
  GRID,
  standOf,
  useLayout,
  WholeDrawing,
  wholeLayout,
  ZoomFrame,
} from '../drawings/whole/index.ts';
import type { Hand, Open } from './hand.ts';
import type { Sketch } from './sketch.ts';
import { spotOf, WarningMarks } from './warning-marks.tsx';

interface BoardProps {
  readonly sketch: Sketch;
  readonly hand: Hand;
  readonly open: Open;
  readonly warnings: readonly Warning[];
  readonly shown: Warning | null;
  onLug(lug: LugRef): void;
  onLead(lead: LeadId): void;
  onPart(part: PartId): void;
  /** Where the part in hand is put down, in units of the drawing. */
  onSpot(at: { readonly x: number; readonly y: number }): void;
}

/** The drawing, with what is picked and what stands out. */
export function Board({
  sketch,
  hand,
  open,
  warnings,
  shown,
  onLug,
  onLead,
  onPart,
  onSpot,
}: BoardProps) {
  const sheet = useRef<HTMLDivElement>(null);
  // Until the ways of the leads are found again the board shows what stood on it before.
  const isReady = useLayout(sketch.circuit, sketch.places) !== null;
  const last = useRef<Sketch | null>(null);
  if (isReady) last.current = sketch;
  if (!last.current) return <p class="soft">{editorWords().drawingIt}</p>;
  const { circuit, places } = last.current;
  const layout = wholeLayout(circuit, places);
  const { box } = layout;
  const holding = hand.is === 'lead' || hand.is === 'end';
  const putDown = (event: MouseEvent) => {
    const rect = sheet.current?.getBoundingClientRect();
    if (hand.is !== 'part' || !rect || event.detail === 0) return;
    event.stopPropagation();
    const scale = rect.width / box.w;
    const onGrid = (value: number) => Math.round(value / GRID) * GRID;
    onSpot({
      x: onGrid(box.x + (event.clientX - rect.left) / scale),
      y: onGrid(box.y + (event.clientY - rect.top) / scale),
    });
  };
  const picked =
    hand.is === 'lead'
      ? hand.from
      : hand.is === 'end'
        ? hand.joint.slice(0, hand.joint.indexOf('@'))
        : hand.is === 'part'
          ? hand.part
          : open.is === 'part'
            ? open.part
            : open.is === 'lead'
              ? open.lead
              : null;
  return (
    <ZoomFrame
      w={box.w}
      h={box.h}
      label={editorWords().theWiring}
      look={lookedAt(last.current, open, shown)}
    >
      <div ref={sheet} class="board-sheet" aria-busy={!isReady} onClickCapture={putDown}>
        <WholeDrawing
          circuit={circuit}
          places={places}
          strong={new Set(shown?.lugs)}
          picked={picked}
          onLug={onLug}
          // With a lead in hand a tap is for a lug: the finger has more room.
          onLead={holding ? undefined : onLead}
          onPart={holding ? undefined : onPart}
        />
        <WarningMarks layout={layout} warnings={shown ? [shown] : warnings} />
      </div>
    </ZoomFrame>
  );
}

/** What lies open is looked at from near; from the corner of the drawing. */
function lookedAt(
  { circuit, places }: Sketch,
  open: Open,
  shown: Warning | null,
): { readonly x: number; readonly y: number } | null {
  const layout = wholeLayout(circuit, places);
  const lead = open.is === 'lead' && layout.leads.find((one) => one.lead.id === open.lead);
  const lug = open.is === 'warnings' ? shown?.lugs[0] : undefined;
  const at =
    open.is === 'part'
      ? places.get(standOf(circuit, open.part))
      : lead
        ? lead.points[Math.floor(lead.points.length / 2)]
        : lug && spotOf(layout, lug);
  return at ? { x: at.x - layout.box.x, y: at.y - layout.box.y } : null;
}
