import type { ComponentChildren } from 'preact';
import type { Circuit, Setting } from '../../circuit/circuit.ts';
import { drawingWords } from '../../words/en/drawings.ts';
import { FIGURE_HEIGHT, KnobFigure, PlugFigure, SwitchFigure } from './control-figures.tsx';
import { type ControlItem, controlItems, knobFigure } from './control-items.ts';
import { COPPER, INK, SOFT } from './theme.ts';

/** The controls as they must stand. Those to be moved since `previous` are copper, bold and say "to". */
export function ControlsStrip({
  circuit,
  setting,
  previous,
  leftHanded = false,
  figures = Number.POSITIVE_INFINITY,
}: {
  circuit: Circuit;
  setting: Setting;
  previous: Setting | null;
  leftHanded?: boolean;
  /** How many of them are drawn so far, from the first; words and room are there for all. */
  figures?: number;
}) {
  const items = controlItems(circuit, setting, previous);
  return (
    <ul
      aria-label={drawingWords().controlsAsTheyMustStand}
      style={{
        display: 'flex',
        flexWrap: 'wrap',
        justifyContent: 'center',
        alignItems: 'flex-start',
        gap: '4px 0',
        margin: 0,
        padding: 0,
        listStyle: 'none',
      }}
    >
      {(leftHanded ? [...items].reverse() : items).map((item, at) => (
        <Control
          key={item.kind === 'plug' ? 'plug' : item.title}
          item={item}
          leftHanded={leftHanded}
          drawn={at < figures}
        />
      ))}
    </ul>
  );
}

interface ControlProps {
  readonly item: ControlItem;
  readonly leftHanded: boolean;
  readonly drawn: boolean;
}

function Control({ item, leftHanded, drawn }: ControlProps) {
  switch (item.kind) {
    case 'knob':
      return (
        <Cell
          width={45}
          title={item.title}
          state={knobFigure(item.figure)}
          moved={item.moved}
          second={item.pull && { text: item.pull.title, moved: item.pull.moved }}
        >
          {drawn && (
            <KnobFigure
              figure={item.figure}
              leftHanded={item.pot.leftHanded === true}
              moved={item.moved}
              pull={item.pull}
            />
          )}
        </Cell>
      );
    case 'switch': {
      const wide = ['blade', 'toggle', 'rotary'].includes(item.state.part.style);
      return (
        <Cell width={wide ? 60 : 45} title={item.title} state={item.state.title} moved={item.moved}>
          <span style={leftHanded ? { display: 'flex', scale: '-1 1' } : { display: 'flex' }}>
            {drawn && <SwitchFigure state={item.state} moved={item.moved} />}
          </span>
        </Cell>
      );
    }
    case 'plug':
      return (
        <Cell
          width={40}
          title={drawingWords().cable}
          state={drawingWords()[item.moved ? 'movePlug' : 'plug'][item.plug]}
          moved={item.moved}
          asWritten
        >
          {drawn && <PlugFigure plug={item.plug} moved={item.moved} />}
        </Cell>
      );
  }
}

/** A figure over its state and its name; the state leads because it is what the hand must do. */
function Cell(props: {
  width: number;
  title: string;
  state: string;
  moved: boolean;
  /** The state says itself what is to be done. */
  asWritten?: boolean;
  second?: { text: string; moved: boolean } | undefined;
  children: ComponentChildren;
}) {
  const { width, title, state, moved, asWritten = false, second } = props;
  return (
    <li
      style={{
        flex: `1 1 ${width / 16}rem`,
        maxWidth: `${(width * 1.5) / 16}rem`,
        textAlign: 'center',
        fontSize: '0.75rem',
        lineHeight: 1.15,
      }}
    >
      <span style={{ display: 'flex', justifyContent: 'center', minHeight: `${FIGURE_HEIGHT}px` }}>
        {props.children}
      </span>
      <State text={moved && !asWritten ? drawingWords().toText(state) : state} moved={moved} />
      {second && (
        <State
          text={second.moved ? drawingWords().toText(second.text) : second.text}
          moved={second.moved}
        />
      )}
      <span style={{ display: 'block', color: SOFT }}>{drawingWords().breakable(title)}</span>
    </li>
  );
}

function State({ text, moved }: { text: string; moved: boolean }) {
  return (
    <span
      style={{
        display: 'block',
        color: moved ? COPPER : INK,
        fontWeight: moved ? 700 : 600,
        fontVariantNumeric: 'tabular-nums',
        textDecoration: moved ? 'underline' : 'none',
        textUnderlineOffset: '2px',
      }}
    >
      {drawingWords().breakable(text)}
    </span>
  );
}
