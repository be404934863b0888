import { useEffect, useState } from 'preact/hooks';
import type { BleedMake } from '../../circuit/catalog/modifications/fitted-bleed.ts';
import type { Pot } from '../../circuit/parts/part.ts';
import { tryingWords } from '../../words/en/trials.ts';
import {
  fieldsOf,
  offersFor,
  type Subject,
  type Tried,
  type TriedFault,
  type TriedField,
} from './trial-subject.ts';

interface TriedFieldsProps {
  readonly subject: Subject;
  readonly tried: Tried;
  readonly faults: readonly TriedFault[];
  onTried(tried: Tried): void;
}

const makes = (): readonly (readonly [BleedMake, string])[] => [
  ['none', tryingWords().none],
  ['alone', tryingWords().capacitorAlone],
  ['parallel', tryingWords().withResistorBeside],
  ['series', tryingWords().withResistorBehind],
];
const tapers = (): readonly (readonly [Pot['taper'], string])[] => [
  ['audio', tryingWords().audio],
  ['linear', tryingWords().linear],
  ['reverse-audio', tryingWords().reverseAudio],
];

/** Kind and values of what is tried. */
export function TriedFields({ subject, tried, faults, onTried }: TriedFieldsProps) {
  return (
    <div class="tried-fields">
      {subject.is === 'bleed' && (
        <label class="field-tall">
          <span>{tryingWords().kind}</span>
          <select
            value={tried.make}
            onChange={({ currentTarget }) =>
              onTried({ ...tried, make: currentTarget.value as BleedMake })
            }
          >
            {makes().map(([make, title]) => (
              <option key={make} value={make}>
                {title}
              </option>
            ))}
          </select>
        </label>
      )}
      {fieldsOf(subject, tried).map((field) => (
        <ValueField
          key={field}
          field={field}
          subject={subject}
          tried={tried}
          fault={faults.find((fault) => fault.field === field)}
          onTried={onTried}
        />
      ))}
      {subject.is === 'pot' && (
        <label class="field-tall">
          <span>{tryingWords().taper}</span>
          <select
            value={tried.taper}
            onChange={({ currentTarget }) =>
              onTried({ ...tried, taper: currentTarget.value as Pot['taper'] })
            }
          >
            {tapers().map(([taper, title]) => (
              <option key={taper} value={taper}>
                {title}
              </option>
            ))}
          </select>
        </label>
      )}
    </div>
  );
}

interface ValueFieldProps {
  readonly field: TriedField;
  readonly subject: Subject;
  readonly tried: Tried;
  readonly fault: TriedFault | undefined;
  onTried(tried: Tried): void;
}

const titles = {
  get ohms() {
    return tryingWords().resistance;
  },
  get farads() {
    return tryingWords().capacitance;
  },
} as const;
const examples = {
  get ohms() {
    return tryingWords().n4k7470k2x220kInSeries;
  },
  farads: '22n, 0.022u, 1n5',
} as const;

/** One value as people write it, with the next ones that are sold where it is none of them. */
function ValueField({ field, subject, tried, fault, onTried }: ValueFieldProps) {
  const [offers, setOffers] = useState<readonly string[]>([]);
  useEffect(() => {
    let here = true;
    offersFor(subject, tried, field).then((found) => here && setOffers(found));
    return () => {
      here = false;
    };
  }, [subject, tried, field]);
  return (
    <div class="field-tall">
      <label class="field-tall">
        <span>{titles[field]}</span>
        <input
          value={tried[field]}
          placeholder={examples[field]}
          autocapitalize="off"
          autocomplete="off"
          spellcheck={false}
          aria-invalid={fault !== undefined}
          onInput={({ currentTarget }) => onTried({ ...tried, [field]: currentTarget.value })}
        />
        {fault && <span class="field-fault">{fault.sentence}</span>}
      </label>
      {offers.length > 0 && (
        <div class="chips">
          {offers.map((offer) => (
            <button
              key={offer}
              type="button"
              class="chip"
              onClick={() => onTried({ ...tried, [field]: offer })}
            >
              <span class="says">{offer}</span>
              <span class="note">{tryingWords().nearestMade}</span>
            </button>
          ))}
        </div>
      )}
    </div>
  );
}
