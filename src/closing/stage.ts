import type { Setting } from '../circuit/circuit.ts';
import { EVERYWHERE } from '../circuit/edit.ts';
import type { Layout } from '../circuit/netlist.ts';
import { reachOf } from '../circuit/reach.ts';
import { potsOf, switchSettings, withKnob } from '../circuit/setting.ts';
import { askKey } from '../diagnosis/ask-key.ts';
import { candidates } from '../diagnosis/candidates.ts';
import type { Ask } from '../readings/reading.ts';
import { soundOf } from '../readings/sound.ts';
import { View } from '../readings/view.ts';
import { betweenEnds, looseEnds } from './loose-ends.ts';

/** How far the job has got: closed (the jack is all there is), cavity open, or the harness on the mat before it is fitted. */
export type Stage = 'closed' | 'open' | 'mat';

/** What may be asked of a finished job, by what is learned from it. */
export interface ClosingAsks {
  /** Ohms, and ohms while a knob turns. */
  readonly figures: readonly Ask[];
  /** Answered in words: a swing, a jump, a sound. A turning knob is in both lists. */
  readonly words: readonly Ask[];
}

/**
 * Nothing that unsolders a joint, takes a pickup out of a fitted guitar, or asks the eyes what the meter knows better. On the mat
 * there are no strings: nothing to hear and nothing to touch.
 */
export function closingAsks(layout: Layout, stage: Stage): ClosingAsks {
  const outside = candidates(layout, 'closed');
  const all = stage === 'closed' ? outside : [...outside, ...candidates(layout, 'open')];
  const strings = layout.circuit.parts.find(
    (part) => part.kind === 'metal' && part.role === 'strings',
  );
  const allowed = (ask: Ask): boolean => {
    if (ask.setting.lifted.length > 0) return false;
    if (stage === 'mat' && lastPass(ask)) return false;
    if (!('red' in ask)) return true;
    return [ask.red, ask.black].every((node) =>
      stage === 'mat' ? node !== `${strings?.id}.metal` : reachOf(layout, node) !== 'pickup-out',
    );
  };
  const pick = (list: readonly Ask[], kinds: readonly Ask['kind'][]): readonly Ask[] => [
    ...new Map(
      list
        .filter((ask) => kinds.includes(ask.kind) && allowed(ask))
        .map((ask) => [askKey(ask), ask]),
    ).values(),
  ];
  const figures = [...pick(all, ['ohms', 'turn']), ...(stage === 'closed' ? [] : ends())];
  return {
    figures,
    words: pick(
      [
        ...all,
        ...(stage === 'mat' ? [] : turnedDown(layout, pick(outside, ['listen']))),
        ...(stage === 'closed' ? [] : moved(figures)),
      ],
      ['turn', 'flex', 'tap', 'touch', 'listen'],
    ),
  };

  function ends(): readonly Ask[] {
    const read = pick(all, ['ohms']);
    const probed = new Set(read.flatMap((ask) => ('red' in ask ? [ask.red, ask.black] : [])));
    const settings = switchSettings(layout.circuit);
    const between = betweenEnds(looseEnds(layout, probed, settings), settings[0] as Setting);
    const known = new Set(read.map(askKey));
    return between.filter((ask) => !known.has(askKey(ask)));
  }
}

/** Settings in which each knob is tried while the guitar is played. */
const TRIED = 2;

/** Each knob at 0 while the guitar is played, where that is heard: what a capacitor or a tone control does no ohms show. */
function turnedDown(layout: Layout, played: readonly Ask[]): readonly Ask[] {
  const brightness = (setting: Setting) => soundOf(new View(layout, setting, []), null).high;
  return potsOf(layout.circuit).flatMap((pot) =>
    played
      .map(({ setting }) => ({ setting, down: withKnob(setting, pot.id, 0) }))
      .filter(({ setting, down }) => brightness(down) < 0.7 * brightness(setting))
      .slice(0, TRIED)
      .map(({ down }): Ask => ({ kind: 'listen', setting: down })),
  );
}

/** Any reading of ohms, watched while all wires are moved; at a wire's bare end also while that wire alone is. */
const moved = (figures: readonly Ask[]): readonly Ask[] =>
  figures.flatMap((ask): Ask[] => {
    if (ask.kind !== 'ohms') return [];
    const wires = [ask.red, ask.black].flatMap((node) => node.match(/^(.*)@/)?.[1] ?? []);
    return [EVERYWHERE, ...new Set(wires)].map((site) => ({ ...ask, kind: 'flex', site }));
  });

const lastPass = (ask: Ask): boolean => ask.kind === 'listen' || ask.kind === 'touch';

/** What every closing check ends with: each position is played with all knobs up, and the strings are touched. */
export const always = (ask: Ask): boolean =>
  lastPass(ask) && Object.values(ask.setting.knobs).every((figure) => figure === 10);
