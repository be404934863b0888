import type { Circuit } from '../../circuit/circuit.ts';
import type { SiteId } from '../../circuit/edit.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import type { Ask } from '../../readings/reading.ts';
import { drawingWords } from '../../words/en/drawings.ts';
import { placeNames } from '../../words/en/places.ts';
import { jointOf, lugWords, nodeWords, partOf, splitLug } from './names.ts';

/** The drawing in one or two sentences, for those who do not see it. */
export function describeAsk(circuit: Circuit, ask: Ask): string {
  const title = (id: string) => partOf(circuit, id)?.title ?? id;
  const place = (site: string) => placeWords(circuit, site);
  const lifted = ask.setting.lifted.map((joint) => {
    const at = jointOf(circuit, joint);
    return at ? drawingWords().leadIsLifted(at.lead.colour ?? '', lugWords(circuit, at.lug)) : '';
  });
  const viaPlug =
    'red' in ask &&
    ask.setting.plug === 'in' &&
    [ask.red, ask.black].every((node) => partOf(circuit, splitLug(node).part)?.kind === 'jack');
  const probes =
    'red' in ask
      ? drawingWords()[viaPlug ? 'probesAtThePlug' : 'probes'](
          nodeWords(circuit, ask.red),
          nodeWords(circuit, ask.black),
        )
      : '';
  const sentence = (() => {
    switch (ask.kind) {
      case 'ohms':
      case 'beep':
        return `${probes}.`;
      case 'turn':
        return drawingWords().probesWhileTheKnobOfTheTitle(probes, title(ask.pot));
      case 'flex':
        return drawingWords().probesWhilePlaceIsMoved(probes, place(ask.site));
      case 'tap':
        return drawingWords().probesWhileSteelIsPulledOff(probes, title(ask.coil));
      case 'farads':
        return drawingWords().probesToReadTheCapacitance(probes, title(ask.part));
      case 'listen':
        return drawingWords().aCableIsPluggedIntoTheOutput;
      case 'hum':
        return drawingWords().aPhoneHearsTheHum;
      case 'touch':
        return drawingWords().aHandTouchesLugListenToThe(lugWords(circuit, ask.metal));
      case 'look':
        return drawingWords().aMagnifierOverPlace(place(ask.at));
      case 'pole':
        return drawingWords().aCompassOverTheTopOfThe(title(ask.coil));
    }
  })();
  return [sentence, ...lifted].filter(Boolean).join(' ');
}

/** "the joint on lug 3 of the neck volume": any place that can be suspected. */
export function placeWords(circuit: Circuit, site: SiteId | PartId): string {
  const joint = jointOf(circuit, site);
  if (joint) return drawingWords().theJointOnLug(lugWords(circuit, joint.lug));
  const lead = circuit.leads.find((candidate) => candidate.id === site);
  if (lead)
    return drawingWords().theWireBetweenLugAndLug2(
      lugWords(circuit, lead.from),
      lugWords(circuit, lead.to),
    );
  const { part: id } = splitLug(site.split(':')[0] ?? site);
  return placeNames().part(partOf(circuit, id)?.title ?? id);
}
