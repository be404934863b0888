import type { SeenPickup } from '../../circuit/seen-pickup.ts';
import type { Role } from '../../sorter/inside.ts';
import type { Joining } from '../../sorter/joins.ts';
import { matWords } from '../../words/en/mat.ts';
import { Table } from '../pieces/table.tsx';
import { leadNames } from './sort-words.ts';
import { SortedDrawing } from './sorted-drawing.tsx';

interface SortJoiningsProps {
  readonly seen: SeenPickup;
  readonly leads: readonly { readonly lead: string; readonly role: Role }[];
  readonly ways: readonly Joining[];
}

/** A card to photograph for each way to join the leads, the usual one open. */
export function SortJoinings({ seen, leads, ways }: SortJoiningsProps) {
  const names = (ids: readonly string[]) => leadNames(seen, ids);
  return (
    <>
      <h2>{matWords().howToJoinThem}</h2>
      <div class="joinings">
        {ways.map((joining, at) => {
          const { way, title, hot, ground, together, apart, note, warning } = joining;
          return (
            <details key={way} class="joining" data-way={way} open={at === 0}>
              <summary>{title}</summary>
              <div class="sorted-drawing">
                <SortedDrawing seen={seen} leads={leads} joining={joining} />
              </div>
              <Table
                rows={[
                  { head: matWords().hotToTheSwitchOrVolume, ids: hot },
                  { head: matWords().joinedToEachOtherTaped, ids: together },
                  { head: matWords().groundToTheBackOfAPot, ids: ground },
                  { head: matWords().tapedEachAlone, ids: apart },
                ]
                  .filter(({ ids }) => ids.length > 0)
                  .map(({ head, ids }) => ({ key: head, head, cells: [names(ids)] }))}
              />
              {note && <p class="soft">{note}</p>}
              {warning && (
                <p role="note" class="sentence">
                  {warning}
                </p>
              )}
            </details>
          );
        })}
      </div>
      <p class="soft">{matWords().bareWirePlateAndCoverGoTo}</p>
    </>
  );
}
