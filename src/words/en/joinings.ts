import { area } from '../area.ts';

/** Ways to join the leads of a pickup. */
const joinings = {
  series: 'Both coils in series',
  parallel: 'Both coils in parallel',
  slugAlone: 'Slug coil alone',
  screwAlone: 'Screw coil alone',
  seriesReversed: 'In series, the other way round',
  seriesInside: 'Both coils in series, as joined inside',
  reversed: 'The other way round',
  whole: 'The whole coil',
  fromTap: 'From the tap only',
  hotMetal:
    'The metal plate is joined to one end inside: this way round it is hot, hums, and shorts the sound where it touches the strings or foil. Give the metal a ground lead of its own first.',
  unseenMetal:
    'No probe could reach this pickup’s metal. If its cover or plate is joined to a lead inside, this way round makes that metal hot: it hums, and shorts the sound where it touches strings or foil. Find out before you close it up.',
  splitSlugHot:
    'For a coil split, the lead at the join goes to a switch: joined to ground it leaves the slug coil, joined to hot the screw coil.',
  splitScrewHot:
    'For a coil split, the lead at the join goes to a switch: joined to ground it leaves the screw coil, joined to hot the slug coil.',
  splitOfTwoSlugHot:
    'For a coil split, these two go to a switch: joined to ground they leave the slug coil, joined to hot the screw coil.',
  splitOfTwoScrewHot:
    'For a coil split, these two go to a switch: joined to ground they leave the screw coil, joined to hot the slug coil.',
};
export const joiningWords = area('joinings', joinings);
