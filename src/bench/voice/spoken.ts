import { voiceWords } from '../../words/en/voice.ts';
/** Words for the ear: signs and short forms of the screen said in full. */
export function spokenOf(text: string): string {
  const say = voiceWords();
  const spelled = say.spelled.reduce((so, [sign, words]) => so.replace(sign, words), text);
  return spelled
    .replace(/\u00a0/g, ' ')
    .replace(/[()]/g, ', ')
    .replace(/ ,/g, ',')
    .replace(/\s+/g, ' ')
    .trim();
}
