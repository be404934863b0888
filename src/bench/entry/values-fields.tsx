import { entryWords } from '../../words/en/entry.ts';
import { useGrowing } from '../growing.ts';
import { toleranceTexts, type ValueFault, type ValueRow } from './value-text.ts';

interface ValuesFieldsProps {
  readonly rows: readonly ValueRow[];
  readonly faults: readonly ValueFault[];
  onRows(rows: readonly ValueRow[]): void;
}

/** Rows that come together: as many as fit on a screen. */
const SCREENFUL = 4;

/** Every value of the guitar: as printed, how far it may be off, and as measured out of circuit. */
export function ValuesFields({ rows, faults, onRows }: ValuesFieldsProps) {
  const shown = SCREENFUL * useGrowing(Math.ceil(rows.length / SCREENFUL));
  const edit = (part: string, change: Partial<ValueRow>) =>
    onRows(rows.map((row) => (row.part === part ? { ...row, ...change } : row)));
  const faultOf = (part: string, field: ValueFault['field']) =>
    faults.find((fault) => fault.part === part && fault.field === field);
  return (
    <>
      {rows.slice(0, shown).map((row) => (
        <fieldset key={row.part} class="value-row">
          <legend>{row.title}</legend>
          <TextField
            label={entryWords().printed}
            text={row.nominal}
            fault={faultOf(row.part, 'nominal')}
            onText={(nominal) => edit(row.part, { nominal })}
          />
          <label class="field-tall">
            <span>{entryWords().within}</span>
            <select
              value={row.tolerance}
              onChange={({ currentTarget }) => edit(row.part, { tolerance: currentTarget.value })}
            >
              {toleranceTexts(row.tolerance).map((share) => (
                <option key={share} value={share}>
                  ±{Math.round(1000 * Number(share)) / 10} %
                </option>
              ))}
            </select>
          </label>
          <TextField
            label={entryWords().measured}
            text={row.measured}
            fault={faultOf(row.part, 'measured')}
            onText={(measured) => edit(row.part, { measured })}
          />
          {row.measuredAt !== undefined && row.measured.trim() !== '' && (
            <TextField
              label={entryWords().atC}
              text={row.measuredAt}
              fault={faultOf(row.part, 'measuredAt')}
              onText={(measuredAt) => edit(row.part, { measuredAt })}
            />
          )}
          {row.odd && <p class="value-odd">{entryWords().measuredFarFromWhatIsPrinted}</p>}
        </fieldset>
      ))}
    </>
  );
}

interface TextFieldProps {
  readonly label: string;
  readonly text: string;
  readonly fault: ValueFault | undefined;
  onText(text: string): void;
}

const TextField = ({ label, text, fault, onText }: TextFieldProps) => (
  <label class="field-tall">
    <span>{label}</span>
    <input
      value={text}
      placeholder={{ Measured: entryWords().notYet, 'at °C': entryWords().notNoted2 }[label] ?? ''}
      autocapitalize="off"
      autocomplete="off"
      spellcheck={false}
      aria-invalid={fault !== undefined}
      onInput={({ currentTarget }) => onText(currentTarget.value)}
    />
    {fault && <span class="field-fault">{fault.sentence}</span>}
  </label>
);
