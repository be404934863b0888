import { area } from '../area.ts';

const checks = {
  whatComesFromLugEndsAtLug2: (lug: string, lug2: string) =>
    `What comes from ${lug} ends at ${lug2} and leads nowhere.`,
  hotAndGroundAreJoinedByWires:
    'Hot and ground are joined by wires alone: the guitar is silent in every setting.',
  withEveryKnobFullUp: 'with every knob full up',
  hotIsJoinedToGroundWhenBy: (when: string, where: string) =>
    `Hot is joined to ground ${when}, by ${where}: the guitar is silent there.`,
  thePartReachesTheJackInNo: (part: string) => `The ${part} reaches the jack in no setting.`,
  thereIsNoOutputJackAddOne: 'There is no output jack: add one to say where the sound comes out.',
  thereIsNoPickup: 'There is no pickup.',
  thePartAtPosition: (part: string, position: string) => `the ${part} at "${position}"`,
  withList: (list: string) => `with ${list}`,
  pressingChangesNothing: (part: string) => `Pressing the ${part} changes nothing.`,
  movingChangesNothing: (part: string) => `Moving the ${part} changes nothing.`,
  turningChangesNothing: (part: string) => `Turning the ${part} changes nothing.`,
  noGround: (what: string) => `${what} has no ground.`,
  noGroundWith: (what: string, stand: string) => `${what} has no ground ${stand}.`,
  itIsOnHot: 'It is on hot: it hums when you touch it.',
  itCanHum: 'It can hum.',
  nothingIsSoldered: (part: string) => `Nothing is soldered to the ${part} yet.`,
  nothingOnIt: (lugs: string) => `${lugs} has nothing on it.`,
};
export const checkWords = area('checks', checks);
