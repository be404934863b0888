/** Files and folders whose text nobody at the bench reads, with the reason. */
export const notShown: readonly { readonly path: string; readonly why: string }[] = [
  { path: 'src/solver/', why: 'promises between programmers' },
  { path: 'src/closing/ladder.ts', why: 'names of edits' },
  { path: 'src/closing/lower-bound.ts', why: 'names of unknowns and constraints' },
  { path: 'src/closing/plan.ts', why: 'names of groups' },
  { path: 'src/readings/blocks.ts', why: 'names of networks' },
  { path: 'src/readings/frame.ts', why: 'names of networks' },
  { path: 'src/readings/listen.ts', why: 'names of networks' },
  { path: 'src/sorter/candidates.ts', why: 'names of groups' },
  { path: 'src/sorter/foretelling.ts', why: 'names of groups' },
  { path: 'src/circuit/catalog/', why: 'data of wirings and changes, looked up where it is shown' },
  { path: 'src/circuit/editing/tray/', why: 'data of the tray, looked up where it is shown' },
  { path: 'src/circuit/seen-pickup.ts', why: 'data of a wiring, looked up where it is shown' },
  { path: 'src/bench/voice/voice.ts', why: 'names of states' },
  { path: 'src/diagnosis/card-jack.ts', why: 'names of settings' },
  { path: 'src/diagnosis/hypothesis.ts', why: 'a name of a repair' },
  { path: 'src/diagnosis/positions.ts', why: 'names of what is left of the hum' },
  { path: 'src/notebook/json-spot.ts', why: 'names of what JSON wants next' },
  { path: 'src/sorter/joins.ts', why: 'names of ways to join' },
  { path: 'src/sorter/together.ts', why: 'names of what is amiss' },
  { path: 'src/practice/', why: 'seeds of dice, and a display as a meter shows it' },
  { path: 'src/circuit/wired.ts', why: 'a name of a bridge' },
  {
    path: 'src/bench/screens/pickup-names.ts',
    why: 'a title as it is stored, looked up where it is shown',
  },
  { path: 'src/circuit/editing/contacts.ts', why: 'data of a wiring, looked up where it is shown' },
];

/** Files whose text has not been moved to the catalogue. May only shrink. */
export const stillToMove: readonly string[] = [];
