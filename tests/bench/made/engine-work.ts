import { workerData } from 'node:worker_threads';
import { startingWirings } from '../../../src/circuit/catalog/index.ts';
import { switchSettings } from '../../../src/circuit/setting.ts';
import { ohms } from '../../../src/circuit/units.ts';
import { closingOf } from '../../../src/closing/check.ts';
import { assess } from '../../../src/diagnosis/assess.ts';
import { cardOf } from '../../../src/diagnosis/card.ts';
import { stepsInNode } from './hunt-in-node.ts';
import { sizedWiring } from './sized-wiring.ts';

/** What the engine is asked for while its memory is watched. */
export type EngineWork = 'hunt' | 'large wiring' | 'card' | 'closing';

const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };
const usual = startingWirings[0]!.build();

const works: Readonly<Record<EngineWork, () => unknown>> = {
  hunt: stepsInNode,
  // 80 lugs, 12 switch states, one odd reading: single and double faults.
  'large wiring': () => {
    const circuit = sizedWiring(80, 'memory');
    const [setting] = switchSettings(circuit);
    return assess({
      circuit,
      meter,
      access: 'open',
      readings: [
        {
          id: 'r1',
          ask: { kind: 'ohms', red: 'jack.tip', black: 'jack.sleeve', setting: setting! },
          seen: { kind: 'ohms', ohms: 'open' },
          at: '2026-01-01T00:00:00Z',
          round: 0,
        },
      ],
      refused: [],
      repairs: [],
    });
  },
  card: () => cardOf({ circuit: usual, meter, readings: [], repairs: [] }),
  closing: () =>
    closingOf({ circuit: usual, meter, stage: 'closed', readings: [], refused: [], repairs: [] }),
};

works[workerData as EngineWork]();
