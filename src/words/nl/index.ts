import type { Catalogue } from '../catalogue.ts';
import { bench } from './bench.ts';
import { card } from './card.ts';
import { checks } from './checks.ts';
import { circuit } from './circuit.ts';
import { closing } from './closing.ts';
import { common } from './common.ts';
import { desk } from './desk.ts';
import { diagnosis } from './diagnosis.ts';
import { drawings } from './drawings.ts';
import { editor } from './editor.ts';
import { entry } from './entry.ts';
import { faults } from './faults.ts';
import { flows } from './flows.ts';
import { hands } from './hands.ts';
import { home } from './home.ts';
import { hum } from './hum.ts';
import { hunt } from './hunt.ts';
import { joinings } from './joinings.ts';
import { keeping } from './keeping.ts';
import { mat } from './mat.ts';
import { names } from './names.ts';
import { notebook } from './notebook.ts';
import { pieces } from './pieces.ts';
import { places } from './places.ts';
import { practice } from './practice.ts';
import { proof } from './proof.ts';
import { readings } from './readings.ts';
import { sorter } from './sorter.ts';
import { together } from './together.ts';
import { trials } from './trials.ts';
import { voice } from './voice.ts';
import { worker } from './worker.ts';

/** Everything that the bench says, in Dutch. */
export const dutch: Catalogue = {
  bench,
  card,
  checks,
  circuit,
  closing,
  common,
  desk,
  diagnosis,
  drawings,
  editor,
  entry,
  faults,
  flows,
  hands,
  home,
  hum,
  hunt,
  joinings,
  keeping,
  mat,
  names,
  notebook,
  pieces,
  places,
  practice,
  proof,
  readings,
  sorter,
  together,
  trials,
  voice,
  worker,
};
