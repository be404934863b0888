import { roundedPath } from './geometry.ts';
import { lugsToDraw } from './lugs.tsx';
import { ProbeMark, ToolMark } from './marks.tsx';
import type { Panel } from './scene.ts';
import { COPPER, INK, PAPER, SOFT, STROKE, TEXT } from './theme.ts';
import { KnobView, PluggedView } from './views.tsx';

/** How many layers a panel has. */
export const LAYERS = 2;

/**
 * One panel's drawing in its own coordinates: light wiring and the part first, then the asked lugs, tools and probes on top.
 * @param layers how many of both are drawn
 */
export function PanelDrawing({ panel, layers = LAYERS }: { panel: Panel; layers?: number }) {
  if (layers <= 0) return null;
  if (panel.view === 'knob')
    return <KnobView frame={panel.frame} leftHanded={panel.leftHandedKnob} />;
  if (panel.view === 'plugged') return <PluggedView frame={panel.frame} />;
  const { portrait, stubs, marks } = panel;
  const strings = marks.some((mark) => mark.kind === 'steel');
  return (
    <g>
      {strings && <StringsAcross panel={panel} />}
      <g fill="none" stroke={SOFT} stroke-width={STROKE.light} stroke-linecap="round">
        {stubs.stubs.map((stub) => (
          <path key={stub.joint} d={roundedPath(stub.path, 8)} opacity={0.8} />
        ))}
      </g>
      {portrait.body}
      <g fill="none" stroke={SOFT} stroke-width={STROKE.light} stroke-linecap="round">
        {stubs.links.map(({ lead, from, control, to }) => (
          <path
            key={lead.id}
            d={`M${from.x} ${from.y}Q${control.x} ${control.y} ${to.x} ${to.y}`}
            opacity={0.8}
          />
        ))}
        {stubs.stubs
          .filter((stub) => stub.lifted)
          .map(({ joint, onWire, path }) => (
            <BareEnd key={joint} from={onWire} to={path.at(-1) ?? onWire} />
          ))}
      </g>
      {layers > 1 && <UpperLayer panel={panel} />}
    </g>
  );
}

function UpperLayer({ panel }: { panel: Panel }) {
  const { stubs, probes, marks } = panel;
  return (
    <g>
      {lugsToDraw(panel)}
      {panel.onWire.map(({ lug, at, lifted }) => (
        <g key={`${at.x} ${at.y}`} stroke-linecap="round">
          {!lifted && (
            <path
              d={`M${lug.x} ${lug.y}L${at.x} ${at.y}`}
              stroke={COPPER}
              stroke-width={STROKE.strong}
            />
          )}
          <circle cx={at.x} cy={at.y} r={5} fill={COPPER} stroke={PAPER} stroke-width={1.5} />
        </g>
      ))}
      <g font-size={TEXT.lead} fill={SOFT}>
        {stubs.stubs.map(
          ({ joint, label, lifted }) =>
            label && (
              <text
                key={joint}
                x={label.at.x}
                y={label.at.y}
                fill={lifted ? COPPER : SOFT}
                font-weight={lifted ? 700 : 400}
                stroke={PAPER}
                stroke-width={4}
                paint-order="stroke"
                stroke-linejoin="round"
              >
                {label.text}
              </text>
            ),
        )}
      </g>
      {marks.map((mark) => (
        <ToolMark key={mark.kind} mark={mark} />
      ))}
      {probes.black && <ProbeMark probe={probes.black} colour="black" />}
      {probes.red && <ProbeMark probe={probes.red} colour="red" />}
    </g>
  );
}

/** The bare strands at the end of a lifted lead. */
function BareEnd({ from, to }: { from: { x: number; y: number }; to: { x: number; y: number } }) {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const share = Math.min(1, 13 / length);
  return (
    <path
      d={`M${from.x} ${from.y}L${from.x + (to.x - from.x) * share} ${from.y + (to.y - from.y) * share}`}
      stroke={INK}
      stroke-width={STROKE.strong}
    />
  );
}

/** The strings over a pickup, only as far as needed to show which side is up. */
function StringsAcross({ panel }: { panel: Panel }) {
  const { w, h, scale } = panel.frame;
  const reach = 66 * scale;
  return (
    <g
      stroke={SOFT}
      opacity={0.6}
      transform={panel.turned ? `rotate(180 ${w / 2} ${h / 2})` : undefined}
    >
      {[-2.5, -1.5, -0.5, 0.5, 1.5, 2.5].map((step, i) => {
        const x = w / 2 - 6 + step * 13.5 * scale;
        return (
          <path
            key={step}
            d={`M${x} ${h / 2 - reach}V${h / 2 + reach}`}
            stroke-width={1.9 - i * 0.2}
          />
        );
      })}
    </g>
  );
}
