import type { Edit } from '../circuit/edit.ts';
import { type Layout, layoutOf } from '../circuit/netlist.ts';
import { settingKey, switchSettings, withKnob } from '../circuit/setting.ts';
import { readingWords } from '../words/en/readings.ts';
import { type Change, HUM_FLOOR, heardAs, ROOMS, type Room, rise } from './hearing.ts';
import type { ReadingKind } from './kind.ts';
import { meanOf } from './rooms.ts';
import { type Sound, soundOf } from './sound.ts';
import { View } from './view.ts';

const WORDS = ['normal', 'silent', 'weak', 'thin', 'dull', 'hum', 'crackle'] as const;
type Word = (typeof WORDS)[number];

const keptSounds = new WeakMap<Layout, Map<string, Sound>>();

/** The sound in the setting of `view` with no edit, or with one joint open: these are asked for many times. */
function keptSound(view: View, open: readonly Edit[] = []): Sound {
  const layout = layoutOf(view.layout.circuit);
  const known = keptSounds.get(layout) ?? new Map<string, Sound>();
  keptSounds.set(layout, known);
  const key = `${settingKey(view.setting)} ${JSON.stringify(open)}`;
  const sound = known.get(key) ?? played(new View(layout, view.setting, open));
  known.set(key, sound);
  return sound;
}

/** What is heard with these edits; a joint that makes and breaks is as it stands. */
function soundWith(view: View, edits: readonly Edit[]): Sound {
  const heard = edits.filter(({ op }) => op !== 'intermittent' && op !== 'worn');
  const [only] = heard;
  if (!only || (heard.length === 1 && only.op === 'open')) return keptSound(view, heard);
  return played(edits === view.edits ? view : new View(view.layout, view.setting, edits));
}

const usualHums = new WeakMap<Layout, number>();
/** Settings looked at for it; a guitar with more switches has the rest alike. */
const MOST_SETTINGS = 32;

/** The magnetic hum that the player is used to: the most of any position as it should be. */
function usualHum(layout: Layout): number {
  const known = usualHums.get(layout);
  if (known !== undefined) return known;
  const most = switchSettings(layout.circuit)
    .slice(0, MOST_SETTINGS)
    .reduce((so, setting) => Math.max(so, keptSound(new View(layout, setting, [])).magnetic), 0);
  usualHums.set(layout, most);
  return most;
}

/** While it is played a hand lies on the strings. */
function played(view: View): Sound {
  const strings = view.layout.circuit.parts.find(
    (part) => part.kind === 'metal' && part.role === 'strings',
  );
  return soundOf(view, strings ? `${strings.id}.metal` : null);
}

/** Level, low end, brightness and hum from the AC model, against the healthy guitar in the same setting, through a table of how people name what they hear. */
export const listenReading: ReadingKind<'listen'> = {
  predict(view) {
    const healthy = keptSound(view);
    const now = soundWith(view, view.edits);
    // Silence needs no comparison: at volume 0 a healthy guitar is silent, too.
    const silent = 1 - heardAs('present', now.level);
    const balance = rise(now.high, healthy.high) - rise(now.low, healthy.low);
    const weak = (1 - silent) * heardAs('remembered', -rise(now.level, healthy.level));
    const thin = (1 - silent) * heardAs('remembered', balance);
    const dull = (1 - silent) * heardAs('remembered', -balance);
    const scratch = scratchOf(view);
    const crackle = Math.max(scratch, crackleOf(view, now));
    // How often a word is said for what is there, and for something else: common practice, no source.
    const weightsAt = (hum: number): Record<Word, number> => ({
      normal:
        0.02 +
        Math.max(
          0,
          (1 - silent) * (1 - weak) * (1 - thin) * (1 - dull) * (1 - hum) * (1 - crackle),
        ),
      // What is very weak is called silent, too, and the other way round.
      silent: 0.01 + 0.9 * silent * (1 - 0.5 * hum) * (1 - scratch) + 0.1 * weak,
      weak: 0.02 + 0.8 * weak + 0.08 * silent,
      thin: 0.02 + 0.9 * thin * (1 - 0.4 * weak) + 0.15 * weak,
      dull: 0.015 + 0.9 * dull,
      hum: 0.02 + 0.9 * hum,
      crackle: 0.01 + crackle,
    });
    const usual = usualHum(view.layout);
    const rooms = ROOMS.map((room) => {
      const weights = weightsAt(humIn(room, now, healthy, usual));
      const sum = WORDS.reduce((total, word) => total + weights[word], 0);
      return Object.fromEntries(WORDS.map((word) => [word, weights[word] / sum]));
    });
    return [{ type: 'choice', chances: meanOf(rooms), rooms }];
  },
  like: (guitar, ask) =>
    guitar.edits.some(({ op }) => op === 'intermittent')
      ? null
      : `${guitar.edits.flatMap((edit) => (edit.op === 'worn' ? [edit.part] : []))} ${guitar.in(ask.setting).whole}`,
  observe: (seen) => [{ type: 'choice', word: seen.heard }],
  askText: () => readingWords().plugInAtLowVolumeSetThe,
  seenText: (seen) => readingWords().heard[seen.heard],
};

/**
 * Chance that a worn track is heard: three times in four while its knob is turned to where it stands, where anything sounds to be
 * scratched at all, and hardly ever where it was left alone (common practice, no source).
 */
function scratchOf(view: View): number {
  let most = 0;
  for (const worn of view.edits) {
    if (worn.op !== 'worn') continue;
    const up = withKnob(view.setting, worn.part, 10);
    const turned = settingKey(up) !== settingKey(view.setting);
    most = Math.max(
      most,
      turned ? 0.75 * heardAs('present', soundWith(view.in(up), view.edits).level) : 0.05,
    );
  }
  return most;
}

/**
 * Chance that it crackles while it is played and nothing is touched: half of the loose joints whose making and breaking is heard in
 * this setting at all (common practice, no source).
 */
function crackleOf(view: View, now: Sound): number {
  let heard = 0;
  for (const loose of view.edits) {
    if (loose.op !== 'intermittent') continue;
    const { site } = loose;
    const isOpen = (edit: Edit) => edit.op === 'open' && edit.site === site;
    const rest = view.edits.filter((edit) => !isOpen(edit));
    const other = soundWith(
      view,
      rest.length < view.edits.length ? rest : [...rest, { op: 'open', site }],
    );
    const [quiet, loud] = [Math.min(now.level, other.level), Math.max(now.level, other.level)];
    heard = Math.max(heard, heardAs('present', loud) * heardAs('remembered', rise(loud, quiet)));
  }
  return Math.max(0.01, 0.5 * heard);
}

/**
 * Chance that hum is what strikes the ear in this room: that of magnetic fields against what some position of this guitar has anyway, that of
 * electric ones against the healthy guitar.
 */
function humIn(room: Room, now: Sound, healthy: Sound, usual: number): number {
  const louder = (strength: number, change: Change) =>
    heardAs(
      'remembered',
      rise(strength * change.now + HUM_FLOOR, strength * change.before + HUM_FLOOR),
    );
  const magnetic = louder(room.magnetic, { now: now.magnetic, before: usual });
  const electric = louder(room.electric, { now: now.electric, before: healthy.electric });
  return 1 - (1 - magnetic) * (1 - electric);
}
