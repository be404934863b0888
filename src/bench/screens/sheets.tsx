import { useEffect, useState } from 'preact/hooks';
import type { SheetSummary } from '../../notebook/index.ts';
import { isFound } from '../../notebook/search.ts';
import { called } from '../../words/called.ts';
import { homeWords } from '../../words/en/home.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { dateText } from '../../words/figures.ts';
import { moveFromOldShelf } from '../old-shelf.ts';
import { DamagedRecord } from '../pieces/damaged-record.tsx';
import { usePorts } from '../ports.ts';
import { hrefOf } from '../route.ts';
import { routeOfSheet } from '../sheet-route.ts';

/** On the home screen: the pickups that were sorted, and those that play together. */
export function Sheets({ wanted, onRemoved }: { wanted: string; onRemoved(): void }) {
  const ports = usePorts();
  const { notebook } = ports;
  const [sheets, setSheets] = useState<readonly SheetSummary[]>([]);
  const [failure, setFailure] = useState<string | null>(null);
  useEffect(() => {
    const look = () =>
      notebook.sheets
        .list()
        .then(setSheets, (error: unknown) =>
          setFailure(error instanceof Error ? error.message : homeWords().noReasonWasGiven),
        );
    void moveFromOldShelf(notebook.sheets, ports.now(), ports.newId()).then(look);
    // Another tab may work on the same pickups.
    return notebook.watch(() => void look());
  }, [notebook, ports]);
  if (failure)
    return (
      <p role="alert" class="sentence">
        {homeWords().yourPickupsCouldNotBeRead(failure)}
      </p>
    );
  const found = sheets.filter(({ title }) => isFound(wanted, [title]));
  if (found.length === 0) return null;
  return (
    <>
      <h2>{homeWords().pickups}</h2>
      <ul class="list">
        {found.map((sheet) => (
          <li key={sheet.id}>
            {sheet.damaged ? (
              <DamagedRecord
                title={sheet.title || homeWords().aPickup}
                sentence={sheet.damaged}
                record={sheet}
                shelf={notebook.sheets}
                onRemoved={onRemoved}
              />
            ) : (
              <a class="list-row" href={hrefOf(routeOfSheet(sheet))}>
                <span class="says">{called(sheet.title) || homeWords().aPickup}</span>
                <span class="note">
                  {pieceWords()[sheet.format === 'lugwise-pickup' ? 'leadsLine' : 'togetherLine'](
                    sheet.readings,
                    dateText(sheet.changedAt),
                  )}
                </span>
              </a>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}
