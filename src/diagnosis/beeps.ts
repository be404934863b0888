import { type Layout, nodeAt } from '../circuit/netlist.ts';
import type { Ask } from '../readings/reading.ts';
import { View } from '../readings/view.ts';

/** Below this a healthy path beeps on every meter, ohm: the lowest threshold is about 20. */
const SURE_BEEP = 10;

/**
 * The continuity test beside each reading in ohms that is a beep on a healthy guitar. It tells less (3 ohm in
 * a joint beep, too), but it is heard, and no hand leaves a probe to enter it.
 */
export function beepsBeside(layout: Layout, asks: readonly Ask[]): readonly Ask[] {
  const views = new Map<string, View>();
  const viewIn = (setting: Ask['setting']): View => {
    const key = JSON.stringify(setting);
    const known = views.get(key) ?? new View(layout, setting, []);
    views.set(key, known);
    return known;
  };
  return asks.flatMap((ask): Ask[] => {
    if (ask.kind !== 'ohms' || ask.setting.lifted.length > 0) return [];
    const { red, black, setting } = ask;
    const healthy = viewIn(setting).dc.resistance(nodeAt(layout, red), nodeAt(layout, black));
    return healthy < SURE_BEEP ? [{ kind: 'beep', red, black, setting }] : [];
  });
}
