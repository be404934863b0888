import { useState } from 'preact/hooks';
import type { Circuit, Setting } from '../../circuit/circuit.ts';
import { restingSetting } from '../../circuit/setting.ts';
import { stringTouch } from '../../flows/index.ts';
import type { Ask } from '../../readings/reading.ts';
import { deskWords } from '../../words/en/desk.ts';
import { humWords } from '../../words/en/hum.ts';
import { ControlsFields } from '../entry/controls-fields.tsx';
import { PointFields } from '../entry/point-fields.tsx';
import type { Say } from '../hunt-actor.ts';
import { Screen } from '../pieces/screen.tsx';
import { HumScreen } from './hum.tsx';

interface OwnReadingProps {
  readonly strip: preact.ComponentChildren;
  readonly circuit: Circuit;
  readonly failure: string | null;
  /** A made-up guitar has no hum to measure. */
  readonly practice: boolean;
  readonly say: Say;
}

type OwnKind = 'ohms' | 'beep' | 'listen' | 'touch';
const kinds: readonly { kind: OwnKind; says: string }[] = [
  {
    kind: 'ohms',
    get says() {
      return deskWords().aNumberIn;
    },
  },
  {
    kind: 'beep',
    get says() {
      return deskWords().aBeepOrNone;
    },
  },
  {
    kind: 'listen',
    get says() {
      return deskWords().whatIHear;
    },
  },
  {
    kind: 'touch',
    get says() {
      return deskWords().humWhenITouchTheStrings;
    },
  },
];

/** Which reading the person has, before its value is entered: at the jack unless told otherwise. */
export function OwnReading({ strip, circuit, failure, practice, say }: OwnReadingProps) {
  const touch = stringTouch(circuit);
  const [kind, setKind] = useState<OwnKind>('ohms');
  const [points, setPoints] = useState({ red: 'jack.tip', black: 'jack.sleeve' });
  const [setting, setSetting] = useState<Setting>(restingSetting(circuit));
  const metered = kind === 'ohms' || kind === 'beep';

  const ask = (): Ask => {
    if (kind === 'listen') return { kind, setting: { ...setting, plug: 'in', lifted: [] } };
    if (kind === 'touch' && touch)
      return { ...touch, setting: { ...setting, plug: 'in', lifted: [] } };
    return { kind: kind === 'beep' ? 'beep' : 'ohms', ...points, setting };
  };
  const [measuring, setMeasuring] = useState(false);
  if (measuring)
    return (
      <HumScreen
        strip={strip}
        circuit={circuit}
        onBack={() => setMeasuring(false)}
        onAnswers={(answers) => say({ type: 'SAW', answers })}
      />
    );
  const same = metered && points.red === points.black;

  return (
    <Screen
      name="own-reading"
      title={deskWords().aReadingOfYourOwn}
      strip={strip}
      acts={
        <>
          <button type="button" class="plain" onClick={() => say({ type: 'BACK' })}>
            {deskWords().back}
          </button>
          <button
            type="button"
            class="main"
            disabled={same}
            onClick={() => say({ type: 'OWN_ASK', ask: ask() })}
          >
            {deskWords().enterIt}
          </button>
        </>
      }
    >
      {failure && (
        <p role="alert" class="sentence">
          {failure}
        </p>
      )}
      <fieldset class="options options-2">
        <legend>{deskWords().whatDoYouHave}</legend>
        {kinds
          .filter((one) => one.kind !== 'touch' || touch)
          .map((one) => (
            <label key={one.kind}>
              <input
                type="radio"
                name="kind"
                checked={kind === one.kind}
                onChange={() => setKind(one.kind)}
              />
              {one.says}
            </label>
          ))}
      </fieldset>
      {!practice && (
        <p class="row">
          <button type="button" class="plain" onClick={() => setMeasuring(true)}>
            {humWords().measureTheHum}
          </button>
        </p>
      )}
      {metered && (
        <PointFields circuit={circuit} setting={setting} points={points} onPoints={setPoints} />
      )}
      {same && <p class="sentence">{deskWords().chooseTwoDifferentPoints}</p>}
      <ControlsFields
        circuit={circuit}
        setting={setting}
        onSetting={setSetting}
        lifting={metered}
      />
    </Screen>
  );
}
