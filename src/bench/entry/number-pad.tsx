import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Choice, Refusal } from '../../readings/entry.ts';
import { entryWords } from '../../words/en/entry.ts';
import { decimalSign } from '../../words/figures.ts';
import { announce } from '../pieces/announce.tsx';

/** A value that was taken, or what to ask about it. */
export type Parsed<V> = { readonly ok: true; readonly value: V } | Refusal<V>;

interface NumberPadProps<V> {
  /** Names the figure for a screen reader: "Reading in ohm". */
  readonly label: string;
  readonly typed: string;
  /** Keys beside the digits, from the top: what they say and what they add. */
  readonly units: readonly UnitKey[];
  /** How the text looks in the display: "5.9 kΩ". Called with nothing typed, too. */
  shown(typed: string): string;
  /** Sums are worked out by code that comes only when it is needed. */
  parse(typed: string): Promise<Parsed<V>>;
  onType(typed: string): void;
  onValue(value: V): void;
}

export interface UnitKey {
  readonly key: string;
  readonly says: string;
  /** What the key shows where that is not what it types. */
  readonly face?: string;
  /** A word of its own takes the place of the digits: "OL". */
  readonly whole?: boolean;
}

const rows = [
  ['1', '2', '3'],
  ['4', '5', '6'],
  ['7', '8', '9'],
] as const;

/** Longer than any figure of a display: a sum, typed on a keyboard. */
const longFigure = 14;

/** The number large, thumb-size keys under it, and a question in their place when the number can mean two things. */
export function NumberPad<V>(props: NumberPadProps<V>) {
  const { label, typed, units, shown, parse, onType, onValue } = props;
  const [refusal, setRefusal] = useState<Refusal<V> | null>(null);
  const reading = useRef(0);
  const display = useDisplayKeys();

  const type = (text: string) => {
    reading.current += 1;
    setRefusal(null);
    onType(text);
  };
  const enter = async () => {
    reading.current += 1;
    const own = reading.current;
    const parsed = await parse(typed);
    // Typed on, entered twice or left meanwhile: what is there now counts.
    if (own !== reading.current) return;
    if (parsed.ok) return onValue(parsed.value);
    setRefusal(parsed);
    announce(parsed.sentence);
  };
  useEffect(
    () => () => {
      reading.current += 1;
    },
    [],
  );
  const press = (unit: UnitKey) => type(unit.whole ? unit.key : withUnit(typed, unit, units));

  return (
    <form
      class="pad"
      onSubmit={(event) => {
        event.preventDefault();
        void enter();
      }}
    >
      <label class="display">
        <span class="unseen">{label}</span>
        <input
          ref={display}
          class="display-input"
          inputMode="none"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          maxLength={80}
          value={typed}
          onInput={({ currentTarget }) => type(currentTarget.value)}
        />
        <span
          class={typed.length > longFigure ? 'display-shown display-long' : 'display-shown'}
          aria-hidden="true"
        >
          {shown(typed === '' ? '–' : typed)}
        </span>
      </label>
      {refusal ? (
        <Question refusal={refusal} onValue={onValue} onBack={() => setRefusal(null)} />
      ) : (
        <div class="keys">
          {rows.map((digits, index) => [
            ...digits.map((digit) => (
              <Key key={digit} says={digit} onPress={() => type(withDigit(typed, digit, units))} />
            )),
            units[index] && (
              <Key
                key={units[index].key}
                says={units[index].face ?? units[index].key}
                label={units[index].says}
                kind="unit"
                onPress={() => press(units[index] as UnitKey)}
              />
            ),
          ])}
          <Key
            says={decimalSign()}
            label={entryWords().decimalPoint}
            kind="point"
            onPress={() => type(withDigit(typed, decimalSign(), units))}
          />
          <Key says="0" kind="zero" onPress={() => type(withDigit(typed, '0', units))} />
          <Key
            says="⌫"
            label={entryWords().deleteWord}
            kind="delete"
            onPress={() => type(shorter(typed, units))}
          />
          <button type="submit" class="key key-enter">
            {entryWords().enter}
          </button>
        </div>
      )}
    </form>
  );
}

/** What a keyboard types goes into the display, as long as it is not meant for something else that has the focus. */
function useDisplayKeys() {
  const display = useRef<HTMLInputElement>(null);
  // With the display, not a frame after it: a key that is pressed in between would be lost.
  useLayoutEffect(() => {
    const onKey = ({ key, target, ctrlKey, metaKey, altKey }: KeyboardEvent) => {
      const elsewhere =
        target instanceof Element && target.closest('input, select, textarea, button, a, summary');
      if (elsewhere || ctrlKey || metaKey || altKey || !/^([\dkKmMoO.,]|Backspace)$/.test(key))
        return;
      display.current?.focus();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
  return display;
}

interface KeyProps {
  readonly says: string;
  readonly label?: string;
  readonly kind?: 'unit' | 'delete' | 'point' | 'zero';
  onPress(): void;
}

const Key = ({ says, label, kind, onPress }: KeyProps) => (
  <button
    type="button"
    class={kind ? `key key-${kind}` : 'key'}
    aria-label={label}
    onClick={onPress}
  >
    {says}
  </button>
);

function Question<V>({
  refusal,
  onValue,
  onBack,
}: {
  refusal: Refusal<V>;
  onValue(value: V): void;
  onBack(): void;
}) {
  return (
    <div class="pad-question">
      <p class="sentence" role="alert">
        {refusal.sentence}
      </p>
      {refusal.choices.map((choice: Choice<V>) => (
        <button
          key={choice.title}
          type="button"
          class="large"
          onClick={() => onValue(choice.value)}
        >
          {choice.title}
        </button>
      ))}
      <button type="button" class="large plain" onClick={onBack}>
        {entryWords().changeWhatITyped}
      </button>
    </div>
  );
}

/** Digits go before a unit that stands already; they replace a word. */
function withDigit(typed: string, digit: string, units: readonly UnitKey[]): string {
  const { digits, unit } = split(typed, units);
  const isSign = digit === '.' || digit === ',';
  if (isSign && /[.,]/.test(digits)) return typed;
  const next = digits === '0' && !isSign ? digit : digits + digit;
  return next.length > 8 ? typed : next + unit;
}

/** The same unit again takes it away. */
function withUnit(typed: string, { key }: UnitKey, units: readonly UnitKey[]): string {
  const { digits, unit } = split(typed, units);
  if (digits === '') return typed;
  return unit === key ? digits : digits + key;
}

function shorter(typed: string, units: readonly UnitKey[]): string {
  const whole = units.some(({ key, whole }) => whole && key === typed);
  return whole ? '' : typed.slice(0, -1);
}

function split(typed: string, units: readonly UnitKey[]) {
  const whole = units.some(({ key, whole }) => whole && key === typed);
  if (whole) return { digits: '', unit: '' };
  const unit = units.find(({ key }) => typed.endsWith(key))?.key ?? '';
  return { digits: typed.slice(0, typed.length - unit.length), unit };
}
