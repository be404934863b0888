import { pieceWords } from '../../words/en/pieces.ts';
import { roomLevel } from '../hearing/hearing.ts';

/** Quietest level on the scale, decibels below full scale. */
const floor = -70;

/** How loud the microphone hears the room. */
export function RoomLevel() {
  const decibels = 20 * Math.log10(Math.max(roomLevel.value, 1e-6));
  const share = Math.max(0, Math.min(1, 1 - decibels / floor));
  return (
    <p class="room-level">
      <span class="soft">{pieceWords().microphone}</span>
      <span class="bar" aria-hidden="true">
        <span class="bar-fill" style={{ width: `${(100 * share).toFixed(0)}%` }} />
      </span>
    </p>
  );
}
