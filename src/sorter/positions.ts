import { checkCircuit } from '../circuit/check.ts';
import type { Circuit, Setting } from '../circuit/circuit.ts';
import { layoutOf, nodeAt } from '../circuit/netlist.ts';
import type { PartId } from '../circuit/parts/part.ts';
import type { CoilId } from '../circuit/seen-pickup.ts';
import { switchesOf, switchSettings } from '../circuit/setting.ts';
import { View } from '../readings/view.ts';
import { called } from '../words/called.ts';
import type { Heard } from './together.ts';

/** What one position of the controls does with the pickups that were measured. */
export interface PlayedPosition {
  /** Position title of each switch that matters: "bridge and middle". */
  readonly title: string;
  readonly plays: readonly PartId[];
  readonly fights: boolean;
  /** Share of the hum that is left: 0 cancels, 1 adds in full; null where a pole is not known. */
  readonly hum: number | null;
}

export interface PositionsQuestion {
  readonly circuit: Circuit;
  /** Pickup of the circuit by id of the pickup heard. */
  readonly places: Readonly<Record<string, string>>;
  readonly heard: readonly Heard[];
}

/** Coils below this share of their EMF at the jack do not count as playing. */
const PLAYS = 0.05;
/** Positions of more switches than these are not listed. */
const MOST = 96;

/**
 * Every position in which two or more of the measured coils play, with the signs that were measured: what a coil's tap shows where
 * its pickup plays alone is what was seen, so its EMF in another position has that sign times how the position turns it.
 * Throws CircuitError for a circuit that cannot be wired.
 */
export function positionsOf({
  circuit,
  places,
  heard,
}: PositionsQuestion): readonly PlayedPosition[] {
  checkCircuit(circuit);
  const layout = layoutOf(circuit);
  const settings = switchSettings(circuit).slice(0, MOST);
  const coils = heard.flatMap((one) => {
    const ids = circuit.pickups.find(({ id }) => id === places[one.id])?.coils ?? [];
    return one.coils.flatMap(({ coil, tap, pole }) => {
      const stands = standsFor(ids, coil, one.coils.length);
      const [id] = stands;
      return id === undefined
        ? []
        : [{ id, stands, tap, winding: pole === null ? null : tap * pole }];
    });
  });
  const [tip, sleeve] = [nodeAt(layout, 'jack.tip'), nodeAt(layout, 'jack.sleeve')];
  let view: View | undefined;
  const shares = settings.map((setting) => {
    view = view ? view.in(setting) : new View(layout, setting, []);
    const { dc } = view;
    // Its EMF lifts the finish above the start; a transfer counts from start to finish.
    return layout.circuit.parts.flatMap((part) => {
      if (part.kind !== 'coil') return [];
      const site = layout.siteIndex.get(`${part.id}:winding`) as number;
      return [{ id: part.id, share: -dc.transfer(tip, sleeve, site) }];
    });
  });
  /** Of the coils that it stands for, the one that plays most. */
  const shareOf = (at: number, stands: readonly PartId[]): number =>
    (shares[at] ?? [])
      .filter(({ id }) => stands.includes(id))
      .reduce((most, { share }) => (Math.abs(share) > Math.abs(most) ? share : most), 0);
  /** The way its signal comes out where the fewest play beside it. */
  const wayOf = (stands: readonly PartId[]): number => {
    const heardAt = shares
      .map((list, at) => ({ at, beside: list.filter(({ share }) => Math.abs(share) > PLAYS) }))
      .filter(({ at }) => Math.abs(shareOf(at, stands)) > PLAYS)
      .sort((x, y) => x.beside.length - y.beside.length);
    return heardAt[0] ? Math.sign(shareOf(heardAt[0].at, stands)) : 1;
  };
  const found: PlayedPosition[] = [];
  settings.forEach((setting, at) => {
    const playing = coils.flatMap((coil) => {
      const share = shareOf(at, coil.stands);
      return Math.abs(share) > PLAYS ? [{ ...coil, share: share * wayOf(coil.stands) }] : [];
    });
    if (playing.length < 2) return;
    const signs = playing.map(({ tap, share }) => Math.sign(tap * share));
    const size = playing.reduce((sum, { share }) => sum + Math.abs(share), 0);
    const hum = playing.reduce<number | null>(
      (sum, { winding, share }) =>
        sum === null || winding === null ? null : sum + winding * share,
      0,
    );
    found.push({
      title: titleOf(circuit, setting),
      plays: playing.map(({ id }) => id),
      fights: signs.some((sign) => sign !== signs[0]),
      hum: hum === null ? null : Math.abs(hum) / size,
    });
  });
  return found;
}

/**
 * The coils of the wiring that a measured coil plays as. Two coils in the place of one hang on its two leads and play as it does;
 * one coil in the place of two plays wherever either of them would.
 */
function standsFor(ids: readonly PartId[], coil: CoilId, measured: number): readonly PartId[] {
  const at = coil === 'a' ? 0 : 1;
  return measured === ids.length ? ids.slice(at, at + 1) : ids;
}

const titleOf = (circuit: Circuit, { positions }: Setting): string =>
  switchesOf(circuit)
    .map((part) => {
      const position = part.positions.find(({ name }) => name === positions[part.id]);
      const title = position?.title ?? '';
      return switchesOf(circuit).length > 1
        ? `${called(part.title)}: ${called(title)}`
        : called(title);
    })
    .join(', ');
