import type { Circuit, Setting } from '../../circuit/circuit.ts';
import { commonWords } from '../../words/en/common.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { siteWords } from '../words.ts';

/** "Read the ohms: R on ..., B on ...": each probe on a line of its own, behind its letter. */
export function AskWords({ words }: { words: string }) {
  const found = commonWords().probes.exec(words);
  if (!found) return <>{words}</>;
  const [, lead, red, black, rest] = found;
  return (
    <>
      {lead && <span class="ask-lead">{lead} </span>}
      <span class="ask-probe">
        <span class="probe probe-red">R</span> <span class="unseen">{commonWords().on} </span>
        {red}
        <span class="unseen">, </span>
      </span>
      <span class="ask-probe">
        <span class="probe probe-black">B</span> <span class="unseen">{commonWords().on} </span>
        {black}
        <span class="unseen">. </span>
      </span>
      {rest && <span class="ask-lead">{rest}</span>}
    </>
  );
}

interface IronWorkProps {
  readonly circuit: Circuit;
  readonly setting: Setting;
  readonly previous: Setting | null;
}

/** What the iron has to do before this reading: ends to lift, and ends to put back. */
export function IronWork({ circuit, setting, previous }: IronWorkProps) {
  const before = previous?.lifted ?? [];
  const lift = setting.lifted.filter((joint) => !before.includes(joint));
  const putBack = before.filter((joint) => !setting.lifted.includes(joint));
  return (
    <>
      {putBack.map((joint) => (
        <p key={joint} class="iron">
          {pieceWords().solderBackFirstSite(siteWords(circuit, joint))}
        </p>
      ))}
      {lift.map((joint) => (
        <p key={joint} class="iron">
          {pieceWords().unsolderFirstSiteTheIronBurns(siteWords(circuit, joint))}
        </p>
      ))}
    </>
  );
}
