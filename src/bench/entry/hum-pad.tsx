import { useState } from 'preact/hooks';
import type { Circuit } from '../../circuit/circuit.ts';
import { type HumPlace, humDifference } from '../../flows/index.ts';
import type { AskOf, Seen } from '../../readings/reading.ts';
import { humWords } from '../../words/en/hum.ts';
import { HumMeter, type MeasuredHum, powerOf } from '../pieces/hum-meter.tsx';
import { settingWords } from '../words.ts';

interface HumPadProps {
  readonly circuit: Circuit;
  readonly ask: AskOf<'hum'>;
  onSeen(seen: Seen): void;
}

/** Two positions measured one after the other, as when a repair is checked. */
export function HumPad({ circuit, ask, onSeen }: HumPadProps) {
  const [places] = useState((): readonly [HumPlace, HumPlace] => [
    { title: settingWords(circuit, ask), setting: ask.setting },
    { title: settingWords(circuit, { ...ask, setting: ask.against }), setting: ask.against },
  ]);
  const [measured, setMeasured] = useState<MeasuredHum>(new Map());
  const [here, there] = places.map((place) => measured.get(place));
  return (
    <>
      <HumMeter places={places} measured={measured} onMeasured={setMeasured} />
      <button
        type="button"
        class="main"
        disabled={!here || !there}
        onClick={() => {
          if (here && there)
            onSeen({ kind: 'hum', decibels: humDifference(powerOf(here), powerOf(there)) });
        }}
      >
        {humWords().useTheFigures}
      </button>
    </>
  );
}
