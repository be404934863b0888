import { checkCircuit } from '../circuit/check.ts';
import type { Circuit } from '../circuit/circuit.ts';
import { checkWords } from '../words/en/checks.ts';
import { floatingLugs } from './floating.ts';
import { heardIn } from './heard.ts';
import { idleControls } from './idle.ts';
import { networkOf } from './network.ts';
import { shortedSettings } from './shorted.ts';
import { standsOf } from './stands.ts';
import { ungroundedMetal } from './ungrounded.ts';
import { unheardCoils } from './unheard.ts';
import type { Warning } from './warning.ts';

/**
 * What may have been meant otherwise in a drawn wiring, the most telling first; empty where nothing stands out.
 * Throws CircuitError for a circuit that cannot be at all.
 */
export function wiringWarnings(circuit: Circuit): readonly Warning[] {
  checkCircuit(circuit);
  const network = networkOf(circuit);
  const stands = standsOf(network);
  const heard = stands.all.map((stand) => heardIn(network, stand));
  const floating = floatingLugs(circuit, network);
  const shorted = shortedSettings(network, stands);
  return [
    ...missingParts(circuit),
    ...shorted,
    ...floating,
    ...unheardCoils(circuit, network, heard),
    ...idleControls(circuit, network, stands.all, heard),
    ...ungroundedMetal(circuit, network, stands),
  ];
}

function missingParts(circuit: Circuit): readonly Warning[] {
  const has = (kind: string) => circuit.parts.some((part) => part.kind === kind);
  const missing = (sentence: string): Warning => ({
    kind: 'missing',
    lugs: [],
    parts: [],
    sentence,
  });
  return [
    ...(has('jack') ? [] : [missing(checkWords().thereIsNoOutputJackAddOne)]),
    ...(has('coil') ? [] : [missing(checkWords().thereIsNoPickup)]),
  ];
}
