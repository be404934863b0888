import { ohms } from '../../circuit/units.ts';
import type { Meter } from '../../readings/reading.ts';
import { entryWords } from '../../words/en/entry.ts';
import { figure } from '../../words/figures.ts';

/** A hand meter of the cheaper sort: 1 % of reading, 0.3 ohm of leads, 20 Mohm at most. Common practice, no source. */
export const usualMeter: Meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };

const limits = [
  { limit: 200e3, says: '200 kΩ' },
  { limit: 2e6, says: '2 MΩ' },
  { limit: 20e6, says: '20 MΩ' },
  { limit: 60e6, says: '60 MΩ' },
] as const;
const accuracies = [0.005, 0.01, 0.02, 0.05] as const;
const leads = [0.1, 0.3, 0.5, 1] as const;

interface MeterFieldsProps {
  readonly meter: Meter;
  onMeter(meter: Meter): void;
}

/** What is known of the meter. */
export const MeterFields = ({ meter, onMeter }: MeterFieldsProps) => (
  <>
    <label class="field">
      <span>{entryWords().largestRange}</span>
      <select
        value={String(meter.limit)}
        onChange={({ currentTarget }) =>
          onMeter({ ...meter, limit: ohms(Number(currentTarget.value)) })
        }
      >
        {withOwn(
          limits.map(({ limit }) => limit),
          meter.limit,
        ).map((limit) => (
          <option key={limit} value={String(limit)}>
            {limits.find((one) => one.limit === limit)?.says ?? entryWords().whatM(limit / 1e6)}
          </option>
        ))}
      </select>
    </label>
    <label class="field">
      <span>{entryWords().offByAtMost}</span>
      <select
        value={String(meter.accuracy)}
        onChange={({ currentTarget }) =>
          onMeter({ ...meter, accuracy: Number(currentTarget.value) })
        }
      >
        {withOwn(accuracies, meter.accuracy).map((share) => (
          <option key={share} value={String(share)}>
            {figure(100 * share, { maximumFractionDigits: 1 })} %
          </option>
        ))}
      </select>
    </label>
    <label class="field">
      <span>{entryWords().tipsTogetherShow}</span>
      <select
        value={String(meter.leads)}
        onChange={({ currentTarget }) =>
          onMeter({ ...meter, leads: ohms(Number(currentTarget.value)) })
        }
      >
        {withOwn(leads, meter.leads).map((value) => (
          <option key={value} value={String(value)}>
            {figure(value)} Ω
          </option>
        ))}
      </select>
    </label>
  </>
);

const withOwn = (all: readonly number[], own: number): readonly number[] =>
  [...new Set([...all, own])].sort((a, b) => a - b);
