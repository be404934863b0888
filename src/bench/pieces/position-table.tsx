import { useEffect, useState } from 'preact/hooks';
import type { Circuit } from '../../circuit/circuit.ts';
import type { PositionSound } from '../../diagnosis/positions.ts';
import { called } from '../../words/called.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { usePorts } from '../ports.ts';
import { Table } from './table.tsx';

/** Which coils sound together in each position, whether any fight, and what becomes of their hum. */
export function PositionTable({ circuit }: { circuit: Circuit }) {
  const { engine } = usePorts();
  const [positions, setPositions] = useState<readonly PositionSound[]>([]);
  useEffect(() => {
    let here = true;
    engine.positionSounds(circuit).then(
      (found) => here && setPositions(found),
      // The rest of the page says what is wrong with the engine; this table is left out.
      () => here && setPositions([]),
    );
    return () => {
      here = false;
    };
  }, [circuit, engine]);
  if (positions.length === 0) return null;
  return (
    <Table
      title={pieceWords().asItIsMeantWhatSoundsTogether}
      columns={[pieceWords().position, pieceWords().sound, pieceWords().hum]}
      rows={positions.map((position) => ({
        key: position.title,
        head: called(position.title),
        cells: [signalWords(position), pieceWords().humOf[position.hum]],
      }))}
    />
  );
}

function signalWords({ coils, pairs }: PositionSound): string {
  if (coils.length === 0) return pieceWords().nothingAsMeant;
  if (coils.length === 1) return pieceWords().oneCoil;
  const against = pairs.filter(({ signal }) => signal === 'fight');
  if (pairs.every(({ signal }) => signal === 'apart'))
    return pieceWords().countCoilsUnderStringsOfTheirOwn(coils.length);
  if (against.length === 0) return pieceWords().countCoilsAdd(coils.length);
  const [pair] = against;
  return against.length === 1 && pair
    ? pieceWords().oneFightsOtherThin(pair.one, pair.other)
    : pieceWords().countPairsOfCoilsFightThin(against.length);
}
