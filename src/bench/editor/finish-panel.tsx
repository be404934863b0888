import type { Circuit } from '../../circuit/circuit.ts';
import { MOST } from '../../circuit/limits.ts';
import type { WiringDraft } from '../../notebook/draft.ts';
import { called } from '../../words/called.ts';
import { editorWords } from '../../words/en/editor.ts';
import { Panel } from '../pieces/panel.tsx';
import type { SketchAct } from './sketch.ts';
import type { Findings } from './use-warnings.ts';

interface FinishPanelProps {
  readonly circuit: Circuit;
  readonly draft: WiringDraft;
  readonly findings: Findings;
  /** Readings of the job that name what the wiring no longer has, in words. */
  readonly lost: readonly string[];
  readonly failure: string | null;
  onAct(act: SketchAct): void;
  onDescribe(words: Partial<Pick<WiringDraft, 'title' | 'access'>>): void;
  onUse(): void;
  onWarnings(): void;
  onClose(): void;
}

/** The last look before a wiring is used. */
export function FinishPanel({
  circuit,
  draft,
  findings,
  lost,
  failure,
  onAct,
  onDescribe,
  onUse,
  onWarnings,
  onClose,
}: FinishPanelProps) {
  const isNew = draft.job === undefined;
  const missing = unusable(circuit, findings);
  const count = findings.warnings.length;
  return (
    <Panel
      title={isNew ? editorWords().useThisWiring : editorWords().useTheNewWiring}
      onClose={onClose}
    >
      {failure && <p role="alert">{failure}</p>}
      {missing && (
        <p class="sentence" role="alert">
          {missing}
        </p>
      )}
      {count > 0 && !missing && (
        <p class="sentence">
          {editorWords().thingsStandOut(count)}{' '}
          <button type="button" class="quiet" onClick={onWarnings}>
            {editorWords().lookAtThem(count)}
          </button>
        </p>
      )}
      {isNew && (
        <label class="field-tall">
          <span>{editorWords().yourNameForTheGuitar}</span>
          <input
            value={draft.title}
            placeholder={editorWords().myGuitar}
            maxLength={80}
            onInput={({ currentTarget }) => onDescribe({ title: currentTarget.value })}
          />
        </label>
      )}
      <label class="field-tall">
        <span>{editorWords().theWiringInWords}</span>
        <input
          key={circuit.title}
          defaultValue={called(circuit.title)}
          maxLength={MOST.title}
          onChange={({ currentTarget }) => onAct({ do: 'entitle', title: currentTarget.value })}
        />
      </label>
      {isNew && (
        <label class="tick">
          <input
            type="checkbox"
            checked={draft.access === 'open'}
            onChange={({ currentTarget }) =>
              onDescribe({ access: currentTarget.checked ? 'open' : 'closed' })
            }
          />
          {editorWords().itIsOpenAlready}
        </label>
      )}
      {lost.length > 0 && (
        <>
          <p class="sentence">{editorWords().readingsNameMore(lost.length)}</p>
          <ul class="lost">
            {lost.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </>
      )}
      <button type="button" class="main" disabled={missing !== null} onClick={onUse}>
        {isNew ? editorWords().start : editorWords().keepIt}
      </button>
    </Panel>
  );
}

/** Why no hunt can begin on this wiring, or null where one can. */
function unusable(circuit: Circuit, findings: Findings): string | null {
  if (circuit.parts.length === 0) return editorWords().nothingIsPlacedYet;
  if (findings.is === 'failed') return findings.sentence;
  return findings.warnings.find(({ kind }) => kind === 'missing')?.sentence ?? null;
}
