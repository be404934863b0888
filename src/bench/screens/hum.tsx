import { useState } from 'preact/hooks';
import type { Circuit } from '../../circuit/circuit.ts';
import { type Answer, humAnswers, humPlaces } from '../../flows/index.ts';
import { humWords } from '../../words/en/hum.ts';
import { hearing } from '../hearing/hearing.ts';
import { HumMeter, type MeasuredHum, powerOf } from '../pieces/hum-meter.tsx';
import { Screen } from '../pieces/screen.tsx';

interface HumScreenProps {
  readonly strip: preact.ComponentChildren;
  readonly circuit: Circuit;
  onBack(): void;
  onAnswers(answers: readonly Answer[]): void;
}

/** Hum of every position by the microphone, if the person wants it. */
export function HumScreen({ strip, circuit, onBack, onAnswers }: HumScreenProps) {
  const [places] = useState(() => humPlaces(circuit));
  const [measured, setMeasured] = useState<MeasuredHum>(new Map());
  const open = hearing.value.is === 'hearing hum';
  const answers = humAnswers(
    [...measured].map(([{ setting }, heard]) => ({ setting, power: powerOf(heard) })),
  );
  return (
    <Screen
      name="hum"
      title={humWords().measureTheHum}
      strip={strip}
      acts={
        <>
          <button type="button" class="plain" onClick={onBack}>
            {humWords().back}
          </button>
          <button
            type="button"
            class="main"
            disabled={answers.length === 0}
            onClick={() => onAnswers(answers)}
          >
            {humWords().useTheFigures}
          </button>
        </>
      }
    >
      {!open && <p class="soft">{humWords().notNeeded}</p>}
      <p class="sentence">{humWords().caution}</p>
      <p>{open ? humWords().keepStill : humWords().putItDown}</p>
      <HumMeter places={places} measured={measured} onMeasured={setMeasured} />
      {!open && <p class="soft">{humWords().nothingKept}</p>}
    </Screen>
  );
}
