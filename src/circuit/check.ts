import { circuitWords } from '../words/en/circuit.ts';
import type { Circuit, Setting } from './circuit.ts';
import { CircuitError } from './errors.ts';
import { isPartKind, kindOf } from './parts/index.ts';
import type { PartId } from './parts/part.ts';

const NAME = /^[A-Za-z][A-Za-z0-9_-]{0,39}$/;

/** The door: every circuit from a file, the editor or a message passes here once. Throws CircuitError naming the thing. */
export function checkCircuit(circuit: Circuit): void {
  if (
    !Array.isArray(circuit.parts) ||
    !Array.isArray(circuit.leads) ||
    !Array.isArray(circuit.pickups)
  )
    throw new CircuitError('bad-shape', 'circuit', circuitWords().theCircuitShouldHaveLists);
  if (circuit.parts.length === 0)
    throw new CircuitError('empty-circuit', 'circuit', circuitWords().theCircuitHasNoPartsPlace);
  const names = new Set<string>();
  const claim = (name: string, what: string): void => {
    if (typeof name !== 'string' || !NAME.test(name))
      throw new CircuitError(
        'bad-shape',
        String(name),
        circuitWords().whatIsCalledNameANameStarts(what, String(name)),
      );
    if (names.has(name))
      throw new CircuitError('duplicate-name', name, circuitWords().twoThingsAreCalledName(name));
    names.add(name);
  };
  const lugs = new Set<string>();
  for (const part of circuit.parts) {
    claim(part.id, circuitWords().aPart);
    if (!isPartKind(part.kind))
      throw new CircuitError(
        'unknown-part',
        part.id,
        circuitWords().partKindIsNoKindOfPart(part.id, String(part.kind)),
      );
    if (typeof part.title !== 'string' || part.title === '')
      throw new CircuitError('bad-shape', part.id, circuitWords().partAPartNeedsATitleIn(part.id));
    kindOf(part).check(part);
    for (const lug of kindOf(part).lugs(part)) lugs.add(`${part.id}.${lug}`);
  }
  for (const lead of circuit.leads) {
    claim(lead.id, circuitWords().aLead);
    for (const end of [lead.from, lead.to])
      if (!lugs.has(end))
        throw new CircuitError(
          'unknown-lug',
          String(end),
          circuitWords().leadLeadEndsOnEndWhichIs(lead.id, String(end)),
        );
    if (lead.from === lead.to)
      throw new CircuitError(
        'lead-to-itself',
        lead.id,
        circuitWords().leadLeadRunsFromFromToItself(lead.id, lead.from),
      );
    if (!['wire', 'pickup', 'leg', 'mount'].includes(lead.kind))
      throw new CircuitError(
        'bad-shape',
        lead.id,
        circuitWords().leadLeadKindIsNoKindOf(lead.id, String(lead.kind)),
      );
  }
  const kinds = new Map(circuit.parts.map((part) => [part.id, part.kind]));
  const owned = new Set<string>();
  for (const pickup of circuit.pickups) {
    claim(pickup.id, circuitWords().aPickup);
    const { coils, plate, cover, title } = pickup;
    const members = [
      ...coils.map((id: PartId) => [id, 'coil'] as const),
      ...[plate, cover].map((id) => [id, 'metal'] as const),
    ];
    for (const [id, kind] of members) {
      if (id === undefined) continue;
      const got = kinds.get(id);
      if (got === undefined)
        throw new CircuitError(
          'unknown-part',
          id,
          circuitWords().pickupThereIsNoPartCalled(title, id),
        );
      if (got !== kind)
        throw new CircuitError(
          'bad-shape',
          id,
          circuitWords().pickupPartIsOfAnotherKind(title, id, got, kind),
        );
      if (owned.has(id))
        throw new CircuitError(
          'duplicate-name',
          id,
          circuitWords().pickupPartBelongsToAPickupAlready(title, id),
        );
      owned.add(id);
    }
  }
}

/** Checks that every name in a setting is one of this circuit's, and every knob figure 0..10. */
export function checkSetting(circuit: Circuit, setting: Setting): void {
  for (const [id, position] of Object.entries(setting.positions)) {
    const part = circuit.parts.find((one) => one.id === id);
    if (part?.kind !== 'switch')
      throw new CircuitError('unknown-part', id, circuitWords().theSettingNamesASwitchIdThat(id));
    if (!part.positions.some((one) => one.name === position))
      throw new CircuitError(
        'unknown-position',
        `${id} ${position}`,
        circuitWords().partHasNoPositionPosition(part.title, position),
      );
  }
  for (const [id, figure] of Object.entries(setting.knobs)) {
    const part = circuit.parts.find((one) => one.id === id);
    if (part?.kind !== 'pot')
      throw new CircuitError('unknown-part', id, circuitWords().theSettingNamesAKnobIdThat(id));
    if (!(typeof figure === 'number' && figure >= 0 && figure <= 10))
      throw new CircuitError(
        'value-out-of-range',
        id,
        circuitWords().partAKnobStandsBetween0And(part.title, String(figure)),
      );
  }
  const joints = new Set(circuit.leads.flatMap((lead) => [`${lead.id}@from`, `${lead.id}@to`]));
  for (const joint of setting.lifted)
    if (!joints.has(joint))
      throw new CircuitError(
        'unknown-lead',
        joint,
        circuitWords().theSettingLiftsJointWhich(joint),
      );
}
