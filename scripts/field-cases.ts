// `npm run -s field-cases` puts the field cases to the engine and writes docs/field-cases.md anew.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { allOutcomes, earOutcomes } from '../tests/field-cases/replay.ts';
import { fieldCaseDocument } from '../tests/field-cases/table.ts';
import { root } from './folders.ts';

const file = join(root, 'docs', 'field-cases.md');
writeFileSync(file, fieldCaseDocument(allOutcomes(), earOutcomes()));
process.stdout.write(`${file}\n`);
