import { useState } from 'preact/hooks';
import type { PickupSheet } from '../../notebook/index.ts';
import { type PlayingPickup, SHEET_VERSION, type TogetherSheet } from '../../notebook/index.ts';
import { list, object, oneOf, text } from '../../notebook/shape.ts';
import { commonWords } from '../../words/en/common.ts';
import { togetherWords } from '../../words/en/together.ts';
import { useOnce } from '../once.ts';
import { KeptNote } from '../pieces/kept-note.tsx';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { go, hrefOf } from '../route.ts';
import { useHalfTold } from '../use-half-told.ts';
import { capital } from '../words.ts';
import { nameOr, theTitled } from './pickup-names.ts';

const playingShape = object({
  id: text(() => '', 12),
  title: text(() => '', 40),
  coils: oneOf(1, 2),
  at: oneOf('jack', 'leads'),
});

/** The first pickup may be one that was sorted on the mat: its plus ends are known, its poles may be. */
export function TogetherTelling({ beside }: { beside: PickupSheet | null }) {
  const ports = usePorts();
  const half = useHalfTold<readonly PlayingPickup[]>(
    `together/${beside?.id ?? ''}`,
    () =>
      (beside
        ? [togetherWords().bridgePickup]
        : [togetherWords().bridgePickup, togetherWords().neckPickup]
      ).map(fresh),
    list(playingShape, beside ? 3 : 4, beside ? 1 : 2),
  );
  const { told: others, tell } = half;
  const [failure, setFailure] = useState<string | null>(null);
  const change = (at: number, more: Partial<PlayingPickup>) =>
    tell((now) => now.map((one, index) => (index === at ? { ...one, ...more } : one)));
  const own = beside && nameOr(togetherWords().pickupOnTheMat, beside);
  const names = [...(own ? [own] : []), ...others.map(({ title }) => title.trim())];
  const fault = names.includes('')
    ? togetherWords().giveEveryPickupAName
    : new Set(names).size < names.length
      ? togetherWords().twoPickupsHaveTheSameName
      : null;
  const start = useOnce(async () => {
    const at = ports.now();
    const sheet = sheetOf({ beside, others, id: ports.newId(), at });
    try {
      await ports.notebook.sheets.write(sheet);
      half.done();
      go({ at: 'together', id: sheet.id });
    } catch (error) {
      setFailure(error instanceof Error ? error.message : togetherWords().itCouldNotBeStored2);
    }
  });
  return (
    <Screen
      name="together-telling"
      title={
        beside ? togetherWords().whichPickupShallItPlayWith : togetherWords().doTwoPickupsFight
      }
      acts={
        <>
          <a
            class="plain"
            href={hrefOf(beside ? { at: 'pickup', id: beside.id, view: 'sort' } : { at: 'home' })}
          >
            {togetherWords().back}
          </a>
          <button type="button" class="main" disabled={fault !== null} onClick={start}>
            {togetherWords().start}
          </button>
        </>
      }
    >
      {failure && (
        <p role="alert" class="sentence">
          {failure}
        </p>
      )}
      <KeptNote told={half} />
      <p>
        {own
          ? togetherWords().tapsAndPolesOfTheOtherOne2(theTitled(own))
          : togetherWords().thinAndHollowWhereTwoPlay}
      </p>
      {others.map((one, at) => (
        <fieldset key={one.id} class="options options-2">
          <legend>{togetherWords().pickupWhat(at + 1 + (beside ? 1 : 0))}</legend>
          <label class="field-tall">
            <span>{togetherWords().name}</span>
            <input
              value={one.title}
              maxLength={40}
              aria-label={togetherWords().nameOfPickupWhat(at + 1)}
              onInput={({ currentTarget }) => change(at, { title: currentTarget.value })}
            />
          </label>
          <label class="field-tall">
            <span>{togetherWords().coils}</span>
            <select
              aria-label={togetherWords().coilsOfPickupWhat(at + 1)}
              value={String(one.coils)}
              onChange={({ currentTarget }) =>
                change(at, { coils: currentTarget.value === '2' ? 2 : 1 })
              }
            >
              <option value="1">{togetherWords().one}</option>
              <option value="2">{togetherWords().two}</option>
            </select>
          </label>
          <label class="field-tall">
            <span>{togetherWords().measuredAt}</span>
            <select
              aria-label={togetherWords().wherePickupWhatIsMeasured(at + 1)}
              value={one.at}
              onChange={({ currentTarget }) =>
                change(at, { at: currentTarget.value as PlayingPickup['at'] })
              }
            >
              <option value="jack">{togetherWords().theJackBuiltIn}</option>
              <option value="leads">{togetherWords().itsOwnLeads}</option>
            </select>
          </label>
        </fieldset>
      ))}
      <p class="row">
        {others.length + (beside ? 1 : 0) < 4 && (
          <button
            type="button"
            class="quiet"
            onClick={() => tell((now) => [...now, fresh(togetherWords().middlePickup, now.length)])}
          >
            {togetherWords().oneMorePickup}
          </button>
        )}
        {others.length > (beside ? 1 : 2) && (
          <button type="button" class="quiet" onClick={() => tell((now) => now.slice(0, -1))}>
            {togetherWords().oneLess}
          </button>
        )}
      </p>
      {fault && (
        <p role="status" class="soft">
          {fault}
        </p>
      )}
    </Screen>
  );
}

const fresh = (title: string, at: number): PlayingPickup => ({
  id: `pickup${at + 1}`,
  title,
  coils: 1,
  at: 'jack',
});

interface Told {
  readonly beside: PickupSheet | null;
  readonly others: readonly PlayingPickup[];
  readonly id: string;
  readonly at: string;
}

/** The id under which a pickup from the mat stands among the others. */
export const FROM_THE_MAT = 'mat';

/** What was seen of the pickup on the mat goes with it: by its plus ends both taps are plus, as the sorting said twice; its poles as read. */
function sheetOf({ beside, others, id, at }: Told): TogetherSheet {
  const own: readonly PlayingPickup[] = beside
    ? [
        {
          id: FROM_THE_MAT,
          title: nameOr(togetherWords().pickupOnTheMat, beside).slice(0, 80),
          coils: beside.seen.coils,
          at: 'leads',
        },
      ]
    : [];
  const coils = beside?.seen.coils === 2 ? (['a', 'b'] as const) : (['a'] as const);
  const taps = beside
    ? coils.flatMap((coil) =>
        [1, 2].map(() => ({ coil, seen: { kind: 'tap', swing: 'plus' } as const })),
      )
    : [];
  const poles = (beside?.readings ?? []).flatMap(({ ask, seen }) =>
    ask.kind === 'pole' && seen.kind === 'pole' && seen.pole !== 'none'
      ? [{ coil: ask.coil as 'a' | 'b', seen }]
      : [],
  );
  return {
    format: 'lugwise-together',
    version: SHEET_VERSION,
    id,
    title: capital(commonWords().and([...own, ...others].map(({ title }) => title.trim()))).slice(
      0,
      200,
    ),
    createdAt: at,
    changedAt: at,
    pickups: [...own, ...others.map((one) => ({ ...one, title: one.title.trim() }))],
    readings: [...taps, ...poles].map((one, index) => ({
      id: `r${index + 1}`,
      pickup: FROM_THE_MAT,
      ...one,
      at,
    })),
  };
}
