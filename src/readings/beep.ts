import { nodeAt } from '../circuit/netlist.ts';
import { ohms } from '../circuit/units.ts';
import { readingWords } from '../words/en/readings.ts';
import type { ReadingKind } from './kind.ts';
import { probesText } from './words.ts';

/** A beep says "below this meter's threshold", which lies anywhere from 20 to 150 ohm and is learned from the beeps themselves. */
export const beepReading: ReadingKind<'beep'> = {
  predict(view, ask, { meter }) {
    const resistance = view.dc.resistance(
      nodeAt(view.layout, ask.red),
      nodeAt(view.layout, ask.black),
    );
    return [{ type: 'threshold', ohms: ohms(resistance + meter.leads) }];
  },
  like: (guitar, ask) => guitar.in(ask.setting).between(ask.red, ask.black),
  observe: (seen) => [{ type: 'threshold', beeps: seen.beeps }],
  askText: (layout, ask) =>
    readingWords().listenForTheBeepProbes(probesText(layout, ask.red, ask.black)),
  seenText: (seen) => (seen.beeps ? readingWords().beeps : readingWords().silent),
};
