import type { Warning } from '../../checks/warning.ts';
import { editorWords } from '../../words/en/editor.ts';
import { Panel } from '../pieces/panel.tsx';
import type { Findings } from './use-warnings.ts';

interface WarningsPanelProps {
  readonly findings: Findings;
  readonly shown: Warning | null;
  onShow(warning: Warning | null): void;
  onClose(): void;
}

/** What stands out, each with the place that it points at. */
export function WarningsPanel({ findings, shown, onShow, onClose }: WarningsPanelProps) {
  return (
    <Panel title={editorWords().whatStandsOut} onClose={onClose}>
      <WarningList findings={findings} shown={shown} onShow={onShow} />
    </Panel>
  );
}

export function WarningList({ findings, shown, onShow }: Omit<WarningsPanelProps, 'onClose'>) {
  const { warnings } = findings;
  if (findings.is === 'failed') return <p role="alert">{findings.sentence}</p>;
  if (warnings.length === 0)
    return (
      <p class="soft">
        {findings.is === 'looking'
          ? editorWords().looking
          : editorWords().nothingEveryLugAndControl}
      </p>
    );
  return (
    <>
      <p class="soft">{editorWords().touchOneToSeeWhereIfYou}</p>
      <ul class="warnings">
        {warnings.map((warning) => (
          <li key={warning.sentence}>
            <button
              type="button"
              aria-pressed={shown?.sentence === warning.sentence}
              disabled={warning.lugs.length === 0}
              onClick={() => onShow(shown?.sentence === warning.sentence ? null : warning)}
            >
              {warning.sentence}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
