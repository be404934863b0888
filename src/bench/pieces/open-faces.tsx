import { pieceWords } from '../../words/en/pieces.ts';
import { MeterFace } from '../drawings/index.ts';

const faces = () => [
  { show: 'OL', says: pieceWords().theLettersOLWithOrWithout },
  { show: '1', says: pieceWords().aLone1AtTheLeftEdge },
  { show: '', says: pieceWords().aBlankDisplay },
  { show: '---', says: pieceWords().dashesOrAnySignThatIsNo },
];

/** What the display can show for open. */
export const OpenFaces = () => (
  <>
    <p>
      {pieceWords().allFourMeanTheSameOpenMore} <strong>{'OL'}</strong>.
    </p>
    <ul class="faces">
      {faces().map(({ show, says }) => (
        <li key={show}>
          <MeterFace show={show} />
          <span>{says}</span>
        </li>
      ))}
    </ul>
    <p>
      {pieceWords().aZeroIsTheOppositeAShort} <strong>0</strong>{' '}
      {pieceWords().onlyIfTheDisplayShows0Or}
    </p>
  </>
);
