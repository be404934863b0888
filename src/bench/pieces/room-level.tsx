import { pieceWords } from '../../words/en/pieces.ts';
import { roomLevel } from '../hearing/hearing.ts';

/** Quietest level on the scale, decibels below full scale. */
const floor = -70;

/** How loud the microphone hears the room. */
export const RoomLevel = () => (
  <LevelBar says={pieceWords().microphone} power={roomLevel.value ** 2} />
);

/** @param power mean square, full scale 1 */
export function LevelBar({ says, power }: { says: string; power: number }) {
  const decibels = 10 * Math.log10(Math.max(power, 1e-12));
  const share = Math.max(0, Math.min(1, 1 - decibels / floor));
  return (
    <p class="room-level">
      <span class="soft">{says}</span>
      <span class="bar" aria-hidden="true">
        <span class="bar-fill" style={{ width: `${(100 * share).toFixed(0)}%` }} />
      </span>
    </p>
  );
}
