import { pieceWords } from '../../words/en/pieces.ts';

/** Above a form that stands as it was left: it may be of another day. */
export const KeptNote = ({ told }: { told: { readonly wasKept: boolean; afresh(): void } }) =>
  told.wasKept ? (
    <p role="status" class="row soft">
      <span>{pieceWords().keptAsYouLeftIt}</span>
      <button type="button" class="quiet" onClick={told.afresh}>
        {pieceWords().beginAfresh}
      </button>
    </p>
  ) : null;
