import { button, miniToggle, pot, selector, slide } from './controls.ts';
import type { TrayItem } from './item.ts';
import { singleCoil, twoCoils } from './pickup.ts';
import { capacitor, jack, resistor, shield, splice, strings } from './rest.ts';

/** Everything that can be placed, in the order in which a guitar is wired. */
export const tray: readonly TrayItem[] = [
  singleCoil,
  twoCoils,
  pot,
  selector,
  miniToggle,
  slide,
  button,
  capacitor,
  resistor,
  jack,
  strings,
  shield,
  splice,
];
