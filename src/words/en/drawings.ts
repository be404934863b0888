import { area } from '../area.ts';

const drawings = {
  controlsAsTheyMustStand: 'Controls as they must stand',
  /** On a pot in the whole wiring, where a line holds eight letters. */
  leftHandedPot: 'lefty',
  cable: 'cable',
  toText: (text: string) => `to ${text}`,
  probesWhileTheKnobOfTheTitle: (probes: string, title: string) =>
    `${probes}, while the knob of the ${title} is turned slowly from 0 to 10.`,
  probesWhilePlaceIsMoved: (probes: string, place: string) => `${probes}, while ${place} is moved.`,
  probesWhileSteelIsPulledOff: (probes: string, title: string) =>
    `${probes}, while steel is pulled off the top of the ${title}.`,
  probesToReadTheCapacitance: (probes: string, title: string) =>
    `${probes}, to read the capacitance of the ${title}.`,
  aPhoneHearsTheHum:
    'A cable is plugged into the output jack, a hand lies on the strings, and the phone hears the hum.',
  aCableIsPluggedIntoTheOutput: 'A cable is plugged into the output jack; listen at low volume.',
  aHandTouchesLugListenToThe: (lug: string) => `A hand touches ${lug}; listen to the hum.`,
  aMagnifierOverPlace: (place: string) => `A magnifier over ${place}.`,
  aCompassOverTheTopOfThe: (title: string) => `A compass over the top of the ${title}.`,
  theJointOnLug: (lug: string) => `the joint on ${lug}`,
  theWireBetweenLugAndLug2: (lug: string, lug2: string) => `the wire between ${lug} and ${lug2}`,
  theMeterShowsTrim: (trim: string) => `The meter shows ${trim}.`,
  theMetersDisplayIsBlank: "The meter's display is blank.",
  aMagnifierOverMap: (map: string) => `A magnifier over ${map}.`,
  outputJack: 'output jack',
  seenFromTheSolderingSide: 'seen from the soldering side',
  fromTheSolderingSide: 'from the soldering side',
  freeCablePlug: 'free cable plug',
  otherPlugInTheJack: (jack: string) => `other plug in the ${jack}`,
  seenFromTheFront: 'seen from the front',
  seenFromBelow: 'seen from below',
  seenFromTheTop: 'seen from the top',
  theLinedCavity: 'the lined cavity',
  thePaintedCavity: 'the painted cavity',
  bareMetal: 'bare metal',
  slotsScrewCoil: 'slots: screw coil',
  fromTheTop: 'from the top',
  seenFromTheBack: 'seen from the back',
  lugsDownCOUNT: (COUNT: string) => `lugs down: ${COUNT}`,
  fromTheBackCOUNT: (COUNT: string) => `from the back: ${COUNT}`,
  tapePushedAside: 'tape pushed aside',
  lyingFlat: 'lying flat',
  theLead: 'the lead',
  liftedColourAtLug: (colour: string, lug: string) => `Lifted: ${colour} at ${lug}`,
  hz: 'Hz',
  dB: 'dB',
  asItIsBelowTheChart: 'As it is: too soft for the chart',
  triedBelowTheChart: 'Tried: too soft for the chart',
  bothBelowTheChart: 'Both: too soft for the chart',
  asItIs: 'as it is',
  tried: 'tried',
  knobFromTheFront: 'knob from the front',
  cableInVolumeLow: 'cable in, volume low',
  colourLifted: (colour: string) => `${colour}, lifted`,
  notInThisWiring: 'not in this wiring',
  slowlyAllTheWay: 'slowly, all the way',
  theWiringOfCircuit: (circuit: string) => `The wiring of ${circuit}`,
  siteShareOfTheSuspicion: (site: string, share: string) => `${site}, ${share} of the suspicion`,
  labelArrowsMoveItAndZoom: (label: string) => `${label}: arrows move it, + and - zoom`,
  zoomIn: 'Zoom in',
  zoomOut: 'Zoom out',
  fit: 'Fit',
  leadIsLifted: (colour: string, lug: string) =>
    `The ${colour === '' ? '' : `${colour} `}lead at ${lug} is lifted.`,
  probes: (red: string, black: string) =>
    `Red probe, marked R, on ${red}; black probe, marked B, on ${black}`,
  probesAtThePlug: (red: string, black: string) =>
    `Red probe, marked R, on ${red}; black probe, marked B, on ${black}, reached at the free plug of the cable`,
  bareWireBeyond: (colour: string, lug: string) =>
    `the bare ${colour === '' ? '' : `${colour} `}wire just beyond ${lug}`,
  to: (place: string) => `to ${place}`,
  otherPlug: 'other plug in the jack',
  lugsUpCOUNTUP: (COUNTUP: string) => `lugs up: ${COUNTUP}`,
  fromTheBackLugsUpCOUNTUP: (COUNTUP: string) => `from the back, lugs up: ${COUNTUP}`,
  lifted: 'lifted',
  belowOnePercent: 'below 1 %',
  /** More words for the colours by which a lead is drawn. */
  colours: { grey: ['gray'], purple: ['violet'] } as Readonly<Record<string, readonly string[]>>,
  /** How the cable stands, and what a hand does to bring it there. */
  plug: { in: 'in', out: 'out' },
  movePlug: { in: 'plug in', out: 'pull out' },
  /** A title where a long word may be broken. */
  breakable: (title: string) => title,
};
export const drawingWords = area('drawings', drawings);
