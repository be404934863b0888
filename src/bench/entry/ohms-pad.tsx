import type { Ohms } from '../../circuit/units.ts';
import { enterOhms } from '../../readings/expression.ts';
import { entryWords } from '../../words/en/entry.ts';
import { NumberPad, type UnitKey } from './number-pad.tsx';

const units: readonly UnitKey[] = [
  {
    key: 'k',
    get says() {
      return entryWords().kThousandsOfOhm;
    },
  },
  {
    key: 'M',
    get says() {
      return entryWords().mMillionsOfOhm;
    },
  },
  {
    key: 'OL',
    get says() {
      return entryWords().olNoNumber;
    },
    whole: true,
  },
];

interface OhmsPadProps {
  readonly label?: string;
  readonly typed: string;
  onType(typed: string): void;
  onOhms(ohms: Ohms | 'open'): void;
}

export const OhmsPad = ({
  label = entryWords().readingInOhm,
  typed,
  onType,
  onOhms,
}: OhmsPadProps) => (
  <NumberPad
    label={label}
    typed={typed}
    units={units}
    shown={(text) =>
      /[–\d.,kM]$/.test(text) ? text.replace(/([kM]?)$/, (unit) => ` ${unit}Ω`) : text
    }
    parse={async (text) => {
      const entry = await enterOhms(text);
      return entry.ok ? { ok: true, value: entry.ohms } : entry;
    }}
    onType={onType}
    onValue={onOhms}
  />
);
