// `npm run replay -- FILE` reads an exported job and prints as JSON what the engine makes of it. A file
// that cannot be read ends with status 2 and one line that says what and where.
import { readFileSync } from 'node:fs';
import { CircuitError } from '../src/circuit/errors.ts';
import { assess } from '../src/diagnosis/assess.ts';
import type { Assessment, NextReading, ReadingReport } from '../src/diagnosis/assessment.ts';
import { evidenceOf } from '../src/flows/work.ts';
import { importJob, type Job } from '../src/notebook/index.ts';
import type { Seen } from '../src/readings/reading.ts';

const BAD_FILE = 2;
const FITS = { fits: true, off: false, doubtful: null } as const;

const [file, ...more] = process.argv.slice(2);
if (file === undefined || more.length > 0) stop('Usage: npm run replay -- FILE, one job file');
const job = read(file);
process.stdout.write(`${JSON.stringify(printed(job, assessed(file, job)), null, 2)}\n`);

function read(path: string): Job {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    stop(`${path}: ${code === 'ENOENT' ? 'there is no such file' : `cannot be read (${code})`}`);
  }
  const imported = importJob(text);
  if (!imported.ok) stop(`${path}: ${imported.sentence}`);
  return imported.job;
}

function assessed(path: string, job: Job): Assessment {
  try {
    return assess(evidenceOf(job));
  } catch (error) {
    if (error instanceof CircuitError) stop(`${path}: circuit: ${error.message}`);
    throw error;
  }
}

/** Ohms and farads as numbers, "open" for over range, and the word that was seen for the rest. */
function printed(job: Job, assessment: Assessment) {
  const seen = new Map(job.readings.map((reading) => [reading.id, reading.seen]));
  return {
    suspects: assessment.suspects.map(({ repair, faults, probability }) => ({
      repair,
      faults: faults.map((fault) => ({
        fault: fault.id,
        sentence: fault.sentence,
        probability: fault.probability,
      })),
      probability,
    })),
    readings: assessment.readings.map((report) => printedReading(report, seen.get(report.id))),
    next: assessment.next[0] ? printedNext(assessment.next[0]) : null,
    verdict: assessment.verdict?.sentence ?? null,
  };
}

function printedReading(report: ReadingReport, seen: Seen | undefined) {
  return {
    ask: report.askText,
    expected: report.expected.text,
    low: report.expected.low ?? null,
    high: report.expected.high ?? null,
    measured: seen?.kind === 'ohms' ? seen.ohms : report.measuredText,
    // null: the reading speaks neither for nor against the intended wiring.
    fits: FITS[report.fits],
  };
}

function printedNext({ ask, askText, worthBits, effortSeconds }: NextReading) {
  const probes = 'red' in ask ? { red: ask.red, black: ask.black } : { red: null, black: null };
  return {
    ask: askText,
    kind: ask.kind,
    ...probes,
    setting: ask.setting,
    worthBits,
    effortSeconds,
  };
}

function stop(line: string): never {
  process.stderr.write(`${line.replace(/\s+/g, ' ')}\n`);
  process.exit(BAD_FILE);
}
