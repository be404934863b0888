import type { Circuit, Setting } from '../../circuit/circuit.ts';
import type { Pot, Switch } from '../../circuit/parts/part.ts';
import { called } from '../../words/called.ts';
import { figure } from '../../words/figures.ts';

export interface SwitchState {
  readonly part: Switch;
  /** Index into the part's positions; 0 when the setting names none. */
  readonly at: number;
  readonly count: number;
  readonly title: string;
}
/** One control as it must stand, and whether it has to be moved to get there. */
export type ControlItem =
  | {
      readonly kind: 'switch';
      readonly title: string;
      readonly state: SwitchState;
      readonly moved: boolean;
    }
  | {
      readonly kind: 'knob';
      readonly title: string;
      readonly pot: Pot;
      readonly figure: number;
      readonly moved: boolean;
      readonly pull?: SwitchState & { readonly moved: boolean };
    }
  | { readonly kind: 'plug'; readonly plug: 'in' | 'out'; readonly moved: boolean };

/** Selectors, knobs with what their shafts carry, other switches, the plug: in the order of the circuit. */
export function controlItems(
  circuit: Circuit,
  setting: Setting,
  previous: Setting | null,
): readonly ControlItem[] {
  const switches = circuit.parts.filter((part): part is Switch => part.kind === 'switch');
  const stateIn = (part: Switch, from: Setting): SwitchState => {
    const at = Math.max(
      0,
      part.positions.findIndex(({ name }) => name === from.positions[part.id]),
    );
    return {
      part,
      at,
      count: part.positions.length,
      title: called(part.positions[at]?.title ?? ''),
    };
  };
  const movedSwitch = (part: Switch): boolean =>
    previous !== null && stateIn(part, setting).at !== stateIn(part, previous).at;
  const item = (part: Switch): ControlItem => ({
    kind: 'switch',
    title: called(part.title),
    state: stateIn(part, setting),
    moved: movedSwitch(part),
  });
  const figureIn = (pot: Pot, from: Setting) => from.knobs[pot.id] ?? 10;
  const knobs = circuit.parts
    .filter((part): part is Pot => part.kind === 'pot')
    .map((pot): ControlItem => {
      const carried = switches.find(({ carrier }) => carrier === pot.id);
      return {
        kind: 'knob',
        title: called(pot.title),
        pot,
        figure: figureIn(pot, setting),
        moved: previous !== null && figureIn(pot, setting) !== figureIn(pot, previous),
        ...(carried && { pull: { ...stateIn(carried, setting), moved: movedSwitch(carried) } }),
      };
    });
  const loose = switches.filter(({ carrier }) => !carrier);
  const selectors = loose.filter(({ style }) => ['blade', 'toggle', 'rotary'].includes(style));
  const others = loose.filter((part) => !selectors.includes(part));
  return [
    ...selectors.map(item),
    ...knobs,
    ...others.map(item),
    {
      kind: 'plug',
      plug: setting.plug,
      moved: previous !== null && previous.plug !== setting.plug,
    },
  ];
}

/** "7" or "2.5". */
export const knobFigure = (at: number): string => figure(at, { maximumFractionDigits: 1 });
