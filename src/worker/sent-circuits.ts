import type { Circuit } from '../circuit/circuit.ts';
import type { EngineCallName, EngineCalls, EngineRequest } from './protocol.ts';

/** Wirings that both ends keep: that of the job, and a few that it is compared with. */
const KEPT = 4;

/** A question on its way: the wiring in it, most of its size, goes along once and is named by its place after that. */
export interface SentRequest extends Omit<EngineRequest, 'input'> {
  /** Without its wiring, where it has one. */
  readonly input: unknown;
  /** Place of the wiring among those kept; the wiring itself where the other end does not have it there. */
  readonly wiring?: { readonly place: number; readonly circuit?: Circuit };
}

type Input = EngineCalls[EngineCallName]['input'];
const isAboutOne = (input: Input): input is Extract<Input, { readonly circuit: Circuit }> =>
  typeof input === 'object' && 'circuit' in input;

/** The page's end, for as long as one worker lives. Wirings are never changed: the same object is the same wiring. */
export class CircuitsSent {
  readonly #kept: Circuit[] = [];
  #next = 0;

  pack(request: EngineRequest): SentRequest {
    const { input } = request;
    if (!isAboutOne(input)) return request;
    const { circuit, ...rest } = input;
    const known = this.#kept.indexOf(circuit);
    if (known >= 0) return { ...request, input: rest, wiring: { place: known } };
    const place = this.#next;
    this.#next = (place + 1) % KEPT;
    this.#kept[place] = circuit;
    return { ...request, input: rest, wiring: { place, circuit } };
  }
}

/** The worker's end. Messages are to be unpacked in the order in which they come. */
export class CircuitsKept {
  readonly #kept: Circuit[] = [];

  /** @throws where a wiring is named that never came */
  unpack({ wiring, ...request }: SentRequest): EngineRequest {
    if (!wiring) return request as EngineRequest;
    if (wiring.circuit) this.#kept[wiring.place] = wiring.circuit;
    const circuit = this.#kept[wiring.place];
    if (!circuit) throw new Error(`No wiring was sent for place ${wiring.place}.`);
    return { ...request, input: { ...(request.input as object), circuit } as Input };
  }
}
