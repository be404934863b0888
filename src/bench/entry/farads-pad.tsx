import type { Farads } from '../../circuit/units.ts';
import { enterFarads } from '../../readings/expression.ts';
import { entryWords } from '../../words/en/entry.ts';
import { NumberPad, type UnitKey } from './number-pad.tsx';

const units = (): readonly UnitKey[] => [
  { key: 'n', says: entryWords().nanofarad },
  { key: 'p', says: entryWords().picofarad },
  { key: 'u', says: entryWords().microfarad, face: 'µ' },
];

interface FaradsPadProps {
  readonly typed: string;
  onType(typed: string): void;
  onFarads(farads: Farads | 'open' | 'short'): void;
}

/** Words for "no capacitor found" and "shorted" have keys of their own under the pad. */
export const FaradsPad = ({ typed, onType, onFarads }: FaradsPadProps) => (
  <div class="stack">
    <NumberPad
      label={entryWords().capacitance}
      typed={typed}
      units={units()}
      shown={(text) => text.replace(/([npu]?)$/, (unit) => ` ${unit === 'u' ? 'µ' : unit}F`)}
      parse={async (text) => {
        const entry = await enterFarads(text);
        return entry.ok ? { ok: true, value: entry.farads } : entry;
      }}
      onType={onType}
      onValue={onFarads}
    />
    <div class="choices">
      <button type="button" class="large" onClick={() => onFarads('open')}>
        {entryWords().showsNothing}
      </button>
      <button type="button" class="large" onClick={() => onFarads('short')}>
        {entryWords().showsAShort}
      </button>
    </div>
  </div>
);
