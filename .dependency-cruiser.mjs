// The arrows of src/ run one way, type imports included. Each room may import itself and the rooms
// named here, and words but for solver; nothing else of src/.
export const rooms = {
  words: [],
  circuit: [],
  solver: ['circuit'],
  readings: ['circuit', 'solver'],
  checks: ['circuit', 'solver'],
  faults: ['circuit', 'solver'],
  diagnosis: ['circuit', 'solver', 'readings', 'faults'],
  sorter: ['circuit', 'solver', 'readings', 'diagnosis'],
  closing: ['circuit', 'solver', 'readings', 'faults', 'diagnosis'],
  practice: ['circuit', 'solver', 'readings', 'faults'],
  worker: [
    'circuit',
    'solver',
    'readings',
    'faults',
    'diagnosis',
    'sorter',
    'checks',
    'closing',
    'practice',
  ],
  notebook: ['circuit', 'readings', 'diagnosis'],
  flows: ['circuit', 'solver', 'readings', 'faults', 'diagnosis', 'sorter', 'closing', 'worker'],
  bench: [
    'circuit',
    'checks',
    'readings',
    'faults',
    'diagnosis',
    'sorter',
    'closing',
    'practice',
    'worker',
    'notebook',
    'flows',
  ],
};

const severity = /** @type {const} */ ('error');

const arrows = Object.entries(rooms).map(([room, named]) => {
  const below = room === 'solver' ? named : ['words', ...named];
  return {
    name: `${room}-imports-only-what-is-below`,
    comment: `src/${room} may import ${below.join(', ') || 'no other room'}.`,
    severity,
    from: { path: `^src/${room}/` },
    to: { path: '^src/', pathNot: `^src/(${[room, ...below].join('|')})/` },
  };
});

const tests = '[.]test[.]tsx?$';

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [
    ...arrows,
    {
      name: 'solver-knows-no-guitar',
      comment: 'The solver takes a netlist: it knows no parts and no wirings.',
      severity,
      from: { path: '^src/solver/', pathNot: tests },
      to: { path: '^src/circuit/(parts|catalog)/' },
    },
    {
      name: 'notebook-draws-no-conclusions',
      comment: 'The notebook keeps what was done and seen; of the diagnosis it knows types alone.',
      severity,
      from: { path: '^src/notebook/', pathNot: tests },
      to: { path: '^src/diagnosis/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'every-file-has-a-room',
      comment: 'A file of src/ lies in one of the rooms above.',
      severity,
      from: {},
      to: { path: '^src/', pathNot: `^src/(${Object.keys(rooms).join('|')})/` },
    },
    {
      name: 'no-cycles',
      comment: 'Two files that import each other are one concept cut in two.',
      severity,
      from: {},
      to: { circular: true },
    },
    {
      name: 'nothing-imports-a-test',
      severity,
      from: { pathNot: tests },
      to: { path: tests },
    },
    {
      name: 'app-imports-nothing-of-the-house-outside',
      comment: 'Scripts and tests stay out of what goes on the phone.',
      severity,
      from: { path: '^src/', pathNot: tests },
      to: { path: '^(scripts|tests)/' },
    },
    {
      name: 'imports-resolve',
      severity,
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    parser: 'swc',
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js', '.mjs'] },
  },
};
