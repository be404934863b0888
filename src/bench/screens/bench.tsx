import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { deskWords } from '../../words/en/desk.ts';
import { fixed } from '../../words/figures.ts';
import { type Language, languageNames } from '../../words/tongue.ts';
import { hearing, learnTone, listenFor, stopHearing, toneSounds } from '../hearing/hearing.ts';
import { RoomLevel } from '../pieces/room-level.tsx';
import { Screen } from '../pieces/screen.tsx';
import { type Preferences, prefer, preferences } from '../preferences.ts';
import { hrefOf } from '../route.ts';
import { confirm } from '../voice/confirm.ts';
import { spokenOf } from '../voice/spoken.ts';
import { findVoice, speak, voiceState } from '../voice/voice.ts';

/** How this person works at this bench: what the phone hears, says and shows. */
export function BenchPage() {
  useEffect(findVoice, []);
  return (
    <Screen
      name="bench"
      title={deskWords().hearingVoiceAndLight}
      acts={
        <a class="main" href={hrefOf({ at: 'home' })}>
          {deskWords().done}
        </a>
      }
    >
      <p class="soft">{deskWords().bothHandsHoldProbesThePhone}</p>
      <HearingPart />
      <VoicePart />
      <h2>{deskWords().soundsAndBuzz}</h2>
      <Tick
        on={preferences.value.confirms}
        onTick={(confirms) => {
          prefer({ confirms });
          confirm('taken');
        }}
      >
        {deskWords().aShortSoundAndABuzzWhen}
      </Tick>
      <h2>{deskWords().howTheGuitarLies}</h2>
      <Tick on={preferences.value.turned} onTick={(turned) => prefer({ turned })}>
        {deskWords().turnTheDrawingsRoundMyGuitar}
      </Tick>
      <Tick on={preferences.value.leftHanded} onTick={(leftHanded) => prefer({ leftHanded })}>
        {deskWords().aLeftHandedGuitarWhatLies}
      </Tick>
      <p class="soft">{deskWords().potsSwitchesAndJackAreDrawn}</p>
      <Choice
        legend={deskWords().light}
        options={lights()}
        chosen={preferences.value.light}
        onChoose={(light) => prefer({ light })}
      />
      <Choice
        legend={deskWords().language}
        options={languageChoices()}
        chosen={preferences.value.language}
        onChoose={(language) => {
          prefer({ language });
          // Everything that was said is said anew; nothing is open here that could be lost.
          location.reload();
        }}
      />
    </Screen>
  );
}

const languageChoices = (): readonly (readonly ['phone' | Language, string])[] => [
  ['phone', deskWords().asThePhone],
  ...(Object.entries(languageNames) as [Language, string][]),
];

const lights = (): readonly (readonly [Preferences['light'], string])[] => [
  ['phone', deskWords().asThePhone],
  ['bright', deskWords().bright],
  ['dark', deskWords().dark],
];

const patiences = (): readonly (readonly [number | null, string])[] => [
  [5, deskWords().afterSeconds(5)],
  [10, deskWords().afterSeconds(10)],
  [20, deskWords().afterSeconds(20)],
  [null, deskWords().onlyByTheKey],
];

const kilohertz = (hertz: number): string => deskWords().kilohertz(fixed(hertz / 1000, 2));

function HearingPart() {
  const { tone, hears, patience } = preferences.value;
  const now = hearing.value;
  useEffect(() => stopHearing, []);
  const learn = () =>
    learnTone((learned) => {
      prefer({ tone: learned, hears: true });
      confirm('taken');
    });
  const busy = now.is !== 'off' && now.is !== 'failed';
  return (
    <>
      <h2>{deskWords().hearTheBeep}</h2>
      <p>{deskWords().theMicrophoneCanHearYourMeters}</p>
      {now.is === 'failed' && <p role="alert">{now.sentence}</p>}
      {now.is === 'waiting for a touch' && <p class="sentence">{deskWords().touchTheScreenOnce}</p>}
      {now.is === 'learning' && (
        <p class="sentence" role="status">
          {deskWords().setTheMeterToTheBeepHold}
        </p>
      )}
      {busy && <RoomLevel />}
      {tone && (
        <p data-tone={Math.round(tone.hertz)} role="status">
          {deskWords().yourMeterBeepsAt} <strong class="figure">{kilohertz(tone.hertz)}</strong>.{' '}
          {now.is === 'listening' &&
            (toneSounds.value ? (
              <strong>{deskWords().iHearItNow}</strong>
            ) : (
              deskWords().touchTheTipsToTryIt
            ))}
        </p>
      )}
      <p class="row">
        {busy ? (
          <button type="button" class="plain" onClick={stopHearing}>
            {deskWords().stopListening}
          </button>
        ) : (
          <>
            <button type="button" class="plain" onClick={learn}>
              {tone ? deskWords().learnItAgain : deskWords().learnMyMetersBeep}
            </button>
            {tone && (
              <button type="button" class="plain" onClick={() => listenFor(tone)}>
                {deskWords().tryIt}
              </button>
            )}
          </>
        )}
      </p>
      {tone && (
        <>
          <Tick on={hears} onTick={(on) => prefer({ hears: on })}>
            {deskWords().answerBeepsByEarAndGoOn}
          </Tick>
          {hears && (
            <Choice
              legend={deskWords().noBeepCountsAsSilent}
              options={patiences()}
              chosen={patience}
              onChoose={(next) => prefer({ patience: next })}
            />
          )}
        </>
      )}
    </>
  );
}

function VoicePart() {
  const { speaks, rate } = preferences.value;
  return (
    <>
      <h2>{deskWords().speak}</h2>
      {voiceState.value === 'no voice' ? (
        <p class="sentence">{deskWords().thisPhoneHasNoVoiceForThe}</p>
      ) : (
        <Tick on={speaks} onTick={(on) => prefer({ speaks: on })}>
          {deskWords().sayWhereTheProbesGoWhatA}
        </Tick>
      )}
      {speaks && voiceState.value !== 'no voice' && (
        <>
          <label class="field">
            <span>{deskWords().speed}</span>
            <input
              type="range"
              min="0.5"
              max="2"
              step="0.1"
              value={rate}
              onInput={({ currentTarget }) => prefer({ rate: Number(currentTarget.value) })}
            />
          </label>
          <p class="row">
            <button
              type="button"
              class="plain"
              onClick={() => void speak(spokenOf(deskWords().sample))}
            >
              {deskWords().saySomething}
            </button>
          </p>
        </>
      )}
    </>
  );
}

interface TickProps {
  readonly on: boolean;
  readonly children: ComponentChildren;
  onTick(on: boolean): void;
}

const Tick = ({ on, children, onTick }: TickProps) => (
  <label class="tick">
    <input
      type="checkbox"
      checked={on}
      onChange={({ currentTarget }) => onTick(currentTarget.checked)}
    />
    <span>{children}</span>
  </label>
);

interface ChoiceProps<V> {
  readonly legend: string;
  readonly options: readonly (readonly [value: V, says: string])[];
  readonly chosen: V;
  onChoose(value: V): void;
}

const Choice = <V,>({ legend, options, chosen, onChoose }: ChoiceProps<V>) => (
  <fieldset class="options options-2">
    <legend>{legend}</legend>
    {options.map(([value, says]) => (
      <label key={says}>
        <input
          type="radio"
          name={legend}
          checked={value === chosen}
          onChange={() => onChoose(value)}
        />
        <span class="option-title">{says}</span>
      </label>
    ))}
  </fieldset>
);
