import { restingSetting } from '../../circuit/setting.ts';
import type { Work } from '../../flows/index.ts';
import type { Ask } from '../../readings/reading.ts';
import { voiceWords } from '../../words/en/voice.ts';
import { controlItems, knobFigure } from '../drawings/control-items.ts';

/** What has to be moved before this reading, said: hands that hold probes do not look at the drawn controls. */
export function movesFor({ circuit, readings }: Work, { setting }: Ask): string {
  const previous = readings.at(-1)?.ask.setting ?? restingSetting(circuit);
  const moves = controlItems(circuit, setting, previous).flatMap((item): readonly string[] => {
    const say = voiceWords();
    if (item.kind === 'plug') return item.moved ? [say.movePlug[item.plug]] : [];
    if (item.kind === 'switch') return item.moved ? [say.moveTo(item.title, item.state.title)] : [];
    return [
      ...(item.moved ? [say.moveTo(item.title, knobFigure(item.figure))] : []),
      ...(item.pull?.moved ? [say.moveTo(item.title, item.pull.title)] : []),
    ];
  });
  return moves.length > 0 ? voiceWords().first(moves) : '';
}
