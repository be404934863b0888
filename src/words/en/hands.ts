import { area } from '../area.ts';

/** What is said while both hands are busy: the drawing, the parts of a screen in large type, how a reading is taken. */
const hands = {
  parts: 'Parts of this screen',
  look: 'Look',
  enter: 'Enter',
  more: 'More',

  backToTheReading: 'Back to the reading',
  whatIsOl: 'What does OL look like?',
  fingers: 'Keep your fingers off the tips: your body is about a megohm beside what you read.',

  explained: {
    ohms: {
      title: 'A reading in ohms',
      drawn: 'A meter set to ohms shows 7.42 k, with one tip on each end of a coil.',
      what: 'How hard it is for current to get from one tip to the other. A coil has thousands of ohms, a wire next to none.',
      how: 'Set the meter to Ω. If you turn the range by hand, start at 20k; go up if it shows OL, down if it shows 0.00.',
      tells:
        'A wire that is off, a short, and the wrong value show in it. Which way round a coil is connected does not.',
    },
    beep: {
      title: 'The beep',
      drawn: 'A meter beeps while its two tips touch one piece of metal.',
      what: 'The meter beeps where its tips are joined by metal, and is silent through a coil.',
      how: 'Set the meter to the beep. Touch the tips together first: it must beep.',
      tells:
        'A wire that is off, and metal that touches what it should not. A beep is not zero: a bad joint of a few ohms beeps, too.',
    },
    turn: {
      title: 'Turning a knob',
      drawn: 'Two lines: one glides up, one breaks off and comes back.',
      what: 'The number on the meter while a knob goes from one end to the other.',
      how: 'Set the meter to Ω. Turn the knob slowly from 0 to 10 and watch the number glide.',
      tells: 'A worn track jumps. A knob that changes nothing is cut off from what is read.',
    },
    flex: {
      title: 'Moving a wire',
      drawn: 'A wire is bent to and fro; its line breaks off at a jump.',
      what: 'Whether the number stays while one wire is moved.',
      how: 'Hold both tips still and move only the wire that is asked for.',
      tells: 'Only this finds a joint that holds at rest and lets go when it is moved.',
    },
    tap: {
      title: 'Pulling steel off a coil',
      drawn: 'A screwdriver is pulled off a coil; the number swings to plus.',
      what: 'A coil makes a small voltage for an instant when steel leaves it. Its sign is what counts.',
      how: 'Set the meter to DC, 200 mV or 2 V. Lay a screwdriver on the coil, wait for zero, pull it away fast. Watch which way the number swings.',
      tells:
        'Coils that play together must swing the same way, or they sound thin and hollow. Ohms never show this.',
    },
    farads: {
      title: 'A capacitor by itself',
      drawn: 'A capacitor with one leg in the air, a tip on each leg.',
      what: 'How much a capacitor holds, in nanofarads.',
      how: 'Set the meter to the capacitor range. One leg of the capacitor must be unsoldered.',
      tells:
        'A tone knob with a broken capacitor does nothing; with a shorted one it turns the sound off.',
    },
    listen: {
      title: 'Listening',
      drawn: 'A cable in the jack, and sound.',
      what: 'How the guitar sounds in one place of the switch and knobs, against how it should.',
      how: 'Plug in at low volume, set the controls as shown, and play.',
      tells:
        'Silent, weak, thin, dull and hum each point at other faults. Thin and hollow points at coils that fight.',
    },
    touch: {
      title: 'A hand on the metal',
      drawn: 'A finger on metal; the wave of the hum becomes smaller.',
      what: 'Whether the hum changes when you touch strings, jack or plate.',
      how: 'Plug in at low volume, do not play, and lay a hand on the metal.',
      tells:
        'Grounded metal makes the hum softer. Where it gets louder, or nothing happens, a ground is missing.',
    },
    hum: {
      title: 'Hum by the microphone',
      drawn: 'A phone beside the amplifier; two columns of hum, one tall and one short.',
      what: 'How much softer or louder the hum is in one position than in another.',
      how: 'Plug in at low volume, lay a hand on the strings, and measure both without moving guitar or phone.',
      tells:
        'Two coils of opposite winding take the hum away together. Where it stays, one of them is silent or turned.',
    },
    look: {
      title: 'A close look',
      drawn: 'Four joints: smooth, lumpy, off its lug, and with solder across to the next lug.',
      what: 'What a joint looks like: smooth and shiny, grey and lumpy, loose, or run across to its neighbour.',
      how: 'Use good light, and a magnifier if you have one.',
      tells:
        'Bad joints mostly look bad, and now and then a good one does: so a look counts, and is not proof.',
    },
    pole: {
      title: 'A compass over a coil',
      drawn: 'A compass over a coil, its needle turned.',
      what: 'Which pole of its magnet a coil has on top.',
      how: 'Hold a compass over the coil. Its north end points at a south pole, its south end at a north pole.',
      tells: 'Two coils that cancel hum have opposite poles on top.',
    },
  },
  atHand: 'At hand next time',
  putItThere: 'Lugwise can stand on your home screen and opens there without a network.',
  putItThereByHand:
    'To have Lugwise on your home screen, also without a network: touch Share in Safari, then Add to Home Screen.',
  toHomeScreen: 'Add to home screen',
  notNow: 'Not now',
  understood: 'Understood',

  howToTakeIt: 'How to take it',
  whatItTells: 'What it tells',
};

export const handWords = area('hands', hands);
