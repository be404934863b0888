import type { Expectation } from '../../diagnosis/assessment.ts';
import { bandWords, held } from '../words.ts';

/** What a healthy guitar shows, and the band in which 19 of 20 healthy guitars lie. */
export function Expected({ expected }: { expected: Expectation }) {
  const band = bandWords(expected);
  return (
    <>
      {held(expected.text)}
      {band && <span class="band"> ({held(band)})</span>}
    </>
  );
}
