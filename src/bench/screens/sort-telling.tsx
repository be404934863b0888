import { useState } from 'preact/hooks';
import { colourOf, type SeenLead, type SeenPickup } from '../../circuit/seen-pickup.ts';
import { freshSort } from '../../flows/sort-work.ts';
import { type PickupSheet, SHEET_VERSION } from '../../notebook/index.ts';
import { list, object, oneOf, text } from '../../notebook/shape.ts';
import { called } from '../../words/called.ts';
import { matWords } from '../../words/en/mat.ts';
import { useOnce } from '../once.ts';
import { KeptNote } from '../pieces/kept-note.tsx';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { go, hrefOf } from '../route.ts';
import { useHalfTold } from '../use-half-told.ts';
import { colourTitle } from './pickup-names.ts';

const kinds = [
  {
    what: 'wire',
    get says() {
      return matWords().insulated;
    },
  },
  {
    what: 'bare',
    get says() {
      return matWords().bareWireOrBraid;
    },
  },
  {
    what: 'pair',
    get says() {
      return matWords().twoJoinedByTheMaker;
    },
  },
] as const;

interface Told extends SeenPickup {
  readonly title: string;
}

const word = (longest: number) => text(() => '', longest);
const toldShape = object({
  title: word(80),
  coils: oneOf(1, 2),
  leads: list(
    object({
      id: word(8),
      colour: word(24),
      'mark?': word(24),
      what: oneOf('wire', 'bare', 'pair'),
    }),
    6,
    2,
  ),
  plate: oneOf(true, false),
  cover: oneOf(true, false),
});

/** What the person sees of the pickup: nothing measured yet. */
export function SortTelling() {
  const ports = usePorts();
  const half = useHalfTold<Told>('leads', nothing, toldShape);
  const { title, coils, leads, plate, cover } = half.told;
  const tell = (more: Partial<Told>) => half.tell((now) => ({ ...now, ...more }));
  const tellLeads = (of: (leads: readonly SeenLead[]) => readonly SeenLead[]) =>
    half.tell((now) => ({ ...now, leads: of(now.leads) }));
  const [failure, setFailure] = useState<string | null>(null);
  const change = (at: number, more: Partial<SeenLead>) =>
    tellLeads((now) => now.map((lead, index) => (index === at ? { ...lead, ...more } : lead)));
  const marked = (at: number, mark: string) =>
    tellLeads((now) =>
      now.map((lead, index) => {
        if (index !== at) return lead;
        const { mark: _, ...plain } = lead;
        return mark === '' ? plain : { ...plain, mark };
      }),
    );
  const names = leads.map((lead) => colourOf(lead).trim().toLowerCase());
  const twice = names.find((name, at) => names.indexOf(name) !== at);
  const fault = leads.some(({ colour }) => colour.trim() === '')
    ? matWords().giveEveryLeadItsColourOrAny
    : twice !== undefined
      ? matWords().twoLeadsAreCalledTwiceGive(called(twice))
      : null;
  const start = useOnce(async () => {
    const at = ports.now();
    const told = leads.map((lead) => ({ ...lead, colour: lead.colour.trim() }));
    const sheet: PickupSheet = {
      format: 'lugwise-pickup',
      version: SHEET_VERSION,
      id: ports.newId(),
      title: title.trim() || colourTitle(told),
      createdAt: at,
      ...freshSort({ coils, leads: told, plate, cover }, at),
    };
    try {
      await ports.notebook.sheets.write(sheet);
      half.done();
      go({ at: 'pickup', id: sheet.id, view: 'sort' });
    } catch (error) {
      setFailure(error instanceof Error ? error.message : matWords().itCouldNotBeStored2);
    }
  });
  return (
    <Screen
      name="sort-telling"
      title={matWords().thePickupOnTheMat}
      acts={
        <>
          <a class="plain" href={hrefOf({ at: 'home' })}>
            {matWords().back}
          </a>
          <button type="button" class="main" disabled={fault !== null} onClick={start}>
            {matWords().start}
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
      <p>{matWords().unsolderItsLeadsFirstNothing}</p>
      <fieldset class="options options-2">
        <legend>{matWords().howManyCoilsDoYouSee}</legend>
        <label>
          <input
            type="radio"
            name="coils"
            checked={coils === 2}
            onChange={() => tell({ coils: 2 })}
          />
          {matWords().two}
        </label>
        <label>
          <input
            type="radio"
            name="coils"
            checked={coils === 1}
            onChange={() => tell({ coils: 1 })}
          />
          {matWords().one}
        </label>
      </fieldset>
      <p class="soft">
        {coils === 2 ? matWords().theScrewCoilIsTheOneWith : matWords().twoRowsUnderOneCoverCount}
      </p>
      <fieldset class="options options-5">
        <legend>{matWords().howManyLeadsTheBareOneCounts}</legend>
        {[2, 3, 4, 5, 6].map((count) => (
          <label key={count}>
            <input
              type="radio"
              name="count"
              checked={leads.length === count}
              onChange={() =>
                tellLeads((now) => [...now, ...fresh(count).slice(now.length)].slice(0, count))
              }
            />
            {count}
          </label>
        ))}
      </fieldset>
      {leads.map((lead, at) => (
        <div key={lead.id} class="told-lead">
          <label class="field-tall">
            <span>{matWords().colourOfLeadWhat(at + 1)}</span>
            <input
              value={lead.colour}
              maxLength={24}
              autocapitalize="off"
              onInput={({ currentTarget }) => change(at, { colour: currentTarget.value })}
            />
          </label>
          <label class="field-tall">
            <span>{matWords().mark}</span>
            <select
              aria-label={matWords().markOfLeadWhat(at + 1)}
              value={lead.mark ?? ''}
              onChange={({ currentTarget }) => marked(at, currentTarget.value)}
            >
              <option value="">{matWords().none}</option>
              {Object.entries(matWords().marks).map(([mark, says]) => (
                <option key={mark} value={mark}>
                  {says}
                </option>
              ))}
            </select>
          </label>
          <label class="field-tall">
            <span>{matWords().itIs}</span>
            <select
              aria-label={matWords().leadWhatIs(at + 1)}
              value={lead.what}
              onChange={({ currentTarget }) =>
                change(at, { what: currentTarget.value as SeenLead['what'] })
              }
            >
              {kinds.map(({ what, says }) => (
                <option key={what} value={what}>
                  {says}
                </option>
              ))}
            </select>
          </label>
        </div>
      ))}
      <label class="tick">
        <input
          type="checkbox"
          checked={plate}
          onChange={({ currentTarget }) => tell({ plate: currentTarget.checked })}
        />
        {matWords().aProbeCanReachItsBasePlate}
      </label>
      <label class="tick">
        <input
          type="checkbox"
          checked={cover}
          onChange={({ currentTarget }) => tell({ cover: currentTarget.checked })}
        />
        {matWords().itHasAMetalCoverThatIs}
      </label>
      <label class="field-tall">
        <span>{matWords().yourNameForThePickup}</span>
        <input
          value={title}
          placeholder={matWords().madeOfItsColours}
          maxLength={80}
          onInput={({ currentTarget }) => tell({ title: currentTarget.value })}
        />
      </label>
      {fault && (
        <p role="status" class="soft">
          {fault}
        </p>
      )}
    </Screen>
  );
}

const nothing = (): Told => ({ title: '', coils: 2, leads: fresh(4), plate: true, cover: false });

const fresh = (count: number): readonly SeenLead[] =>
  Array.from({ length: count }, (_, at) => ({ id: `lead${at + 1}`, colour: '', what: 'wire' }));
