import { useEffect, useState } from 'preact/hooks';
import { type HumPlace, humDifference } from '../../flows/index.ts';
import { humText } from '../../readings/hum.ts';
import { humWords } from '../../words/en/hum.ts';
import { fixed } from '../../words/figures.ts';
import { hearing, humNow, inputs, listenForHum, measureHum } from '../hearing/hearing.ts';
import { type Hum, harmonicCount, type Mains } from '../hearing/hum.ts';
import { type HumHeard, humSeconds } from '../hearing/hum-ear.ts';
import { endHum } from '../hearing/use-ear.ts';
import { confirm } from '../voice/confirm.ts';
import { LevelBar, RoomLevel } from './room-level.tsx';

/** Hum of each place that was measured. */
export type MeasuredHum = ReadonlyMap<HumPlace, HumHeard>;

interface HumMeterProps {
  readonly places: readonly HumPlace[];
  readonly measured: MeasuredHum;
  onMeasured(measured: MeasuredHum): void;
}

/** What the room has in hum's place is all that can be said where hum is lost in it. */
export const powerOf = ({ hum }: HumHeard): number =>
  hum.clear ? Math.max(hum.power, hum.noise) : hum.noise;

/** Opens the microphone when it is told to, shows how loud room and hum are, and measures place after place. */
export function HumMeter({ places, measured, onMeasured }: HumMeterProps) {
  const [mains, setMains] = useState<Mains | null>(null);
  const [input, setInput] = useState<string | undefined>();
  const [devices, setDevices] = useState<readonly MediaDeviceInfo[]>([]);
  const [busy, setBusy] = useState<HumPlace | null>(null);
  const now = hearing.value;
  const open = now.is === 'hearing hum' || now.is === 'waiting for a touch';
  useEffect(() => endHum, []);
  const listen = async (which: Mains | null, from: string | undefined) => {
    setBusy(null);
    // Levels of another input or an earlier opening are not on the same scale.
    onMeasured(new Map());
    await listenForHum(which, from);
    if (hearing.value.is !== 'failed') setDevices(await inputs());
  };
  const measure = (place: HumPlace) => {
    setBusy(place);
    measureHum((heard) => {
      confirm(heard.cut ? 'unsteady' : 'taken');
      setBusy(null);
      const next = new Map(measured);
      if (heard.cut) next.delete(place);
      else next.set(place, heard);
      onMeasured(next);
    });
  };
  return (
    <div class="hum-meter">
      {now.is === 'failed' && <p role="alert">{now.sentence}</p>}
      {!open && (
        <>
          <fieldset class="options options-3">
            <legend>{humWords().mains}</legend>
            {([null, 50, 60] as const).map((one) => (
              <label key={one}>
                <input
                  type="radio"
                  name="mains"
                  checked={mains === one}
                  onChange={() => setMains(one)}
                />
                {one === null ? humWords().findOut : humWords().hertz(one)}
              </label>
            ))}
          </fieldset>
          <button type="button" class="large" onClick={() => void listen(mains, input)}>
            {humWords().openTheMicrophone}
          </button>
        </>
      )}
      {open && (
        <>
          {devices.length > 1 && (
            <label class="field">
              <span>{humWords().input}</span>
              <select
                value={input ?? devices[0]?.deviceId}
                onChange={({ currentTarget }) => {
                  setInput(currentTarget.value);
                  void listen(mains, currentTarget.value);
                }}
              >
                {devices.map(({ deviceId, label }) => (
                  <option key={deviceId} value={deviceId}>
                    {label}
                  </option>
                ))}
              </select>
            </label>
          )}
          <Levels />
          <ul class="hum-places">
            {places.map((place) => (
              <li key={place.title}>
                <span class="place-title">{place.title}</span>
                <output class={measured.has(place) ? 'place-seen' : 'soft'}>
                  {busy === place ? humWords().measuring : standing(place, measured)}
                </output>
                <button
                  type="button"
                  class="plain"
                  disabled={busy !== null || humNow.value === null}
                  onClick={() => measure(place)}
                >
                  {measured.has(place) ? humWords().measureAgain : humWords().measure}
                </button>
                {busy === place && (
                  <span class="bar hum-while" aria-hidden="true">
                    <span class="bar-fill" style={{ animationDuration: `${humSeconds}s` }} />
                  </span>
                )}
              </li>
            ))}
          </ul>
          <button type="button" class="quiet" onClick={endHum}>
            {humWords().closeTheMicrophone}
          </button>
        </>
      )}
    </div>
  );
}

/** How this place stands to the loudest of those measured. */
function standing(place: HumPlace, measured: MeasuredHum): string {
  const heard = measured.get(place);
  if (!heard) return humWords().notMeasured;
  const loudest = Math.max(...[...measured.values()].map(powerOf));
  const own = powerOf(heard);
  const text = own === loudest ? humWords().loudest : humText(humDifference(own, loudest));
  return heard.hum.clear ? text : humWords().atMost(text);
}

/** Room and hum as they are now, and what to mend before anything is measured. */
function Levels() {
  const heard = humNow.value;
  const now = hearing.value;
  const clear = heard?.hum.clear ? heard.hum : null;
  const trouble =
    now.is === 'hearing hum' && now.uneven
      ? humWords().uneven
      : heard?.cut
        ? humWords().tooLoud
        : heard && !clear
          ? humWords().noHumHeard
          : null;
  return (
    <>
      <RoomLevel />
      <LevelBar
        says={clear ? humWords().humAt(fixed(clear.hertz, 0)) : humWords().hum}
        power={clear?.power ?? 0}
      />
      <Harmonics hum={clear} />
      {trouble && (
        <p class="sentence" role="status">
          {trouble}
        </p>
      )}
    </>
  );
}

/** Decibels from the strongest harmonic down to the foot of its column. */
const columnRange = 40;

/** One column a harmonic, against the strongest. */
function Harmonics({ hum }: { hum: Hum | null }) {
  const strongest = Math.max(1e-12, ...(hum?.harmonics ?? []));
  return (
    <svg
      class="hum-columns"
      viewBox={`0 0 ${20 * harmonicCount} 40`}
      role="img"
      aria-label={humWords().harmonics}
    >
      {Array.from({ length: harmonicCount }, (_, index) => {
        const power = hum?.harmonics[index] ?? 0;
        const down = 10 * Math.log10(Math.max(power / strongest, 1e-9));
        const height = Math.max(1, 38 * Math.max(0, 1 + down / columnRange));
        return <rect key={index} x={20 * index + 4} y={39 - height} width={12} height={height} />;
      })}
      <path d={`M0 39.5H${20 * harmonicCount}`} />
    </svg>
  );
}
