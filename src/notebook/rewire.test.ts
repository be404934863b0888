import { expect, it } from 'vitest';
import { afterAct } from '../circuit/editing/act.ts';
import { emptyJob, fullJob, moment } from './job.fixture.ts';
import { restoreJob } from './restore.ts';
import { refitted, rewired } from './rewire.ts';

const job = fullJob();
const words = () => 'as it was';
const pot = job.circuit.parts.find(({ kind }) => kind === 'pot')!;

it('keeps every reading that the new wiring still has the lugs for', () => {
  const circuit = { ...job.circuit, title: 'drawn anew' };
  const next = rewired(
    job,
    { circuit, places: { jack: { x: 0, y: 0, turn: 90 } } },
    words,
    moment(40),
  );
  expect(next.readings).toEqual(job.readings);
  expect(next.setAside).toEqual(job.setAside);
  expect(next.places).toEqual({ jack: { x: 0, y: 0, turn: 90 } });
  expect(next.changedAt).toBe(moment(40));
  expect(restoreJob(JSON.parse(JSON.stringify(next)))).toEqual(next);
});

it('sets aside what names a part that is gone, and takes it back once it is there again', () => {
  const circuit = afterAct(job.circuit, { do: 'remove', part: pot.id });
  const next = rewired(job, { circuit }, ({ ask }) => `${ask.kind} as it was`, moment(40));
  const gone = job.circuit.leads.filter((lead) => !circuit.leads.includes(lead));
  const named = job.readings.filter(({ ask: { setting, ...rest } }) =>
    [pot.id, ...gone.map(({ id }) => id)].some((id) =>
      new RegExp(`"${id}["@.:]`).test(JSON.stringify([rest, setting.lifted])),
    ),
  );
  expect(named.length).toBeGreaterThan(0);
  expect(next.readings.map(({ id }) => id)).toEqual(
    job.readings.filter((one) => !named.includes(one)).map(({ id }) => id),
  );
  expect(next.setAside?.map((one) => one.reading)).toEqual([job.setAside?.[0]?.reading, ...named]);
  expect(next.setAside?.[1]?.words).toBe(`${named[0]?.ask.kind} as it was`);
  restoreJob(JSON.parse(JSON.stringify(next)));
  const back = rewired(next, { circuit: job.circuit }, words, moment(41));
  expect(back.readings.map(({ id }) => id)).toEqual(job.readings.map(({ id }) => id));
  expect(back.setAside).toEqual(job.setAside);
});

it('leaves a control that is gone out of a setting where it stood at rest, and only there', () => {
  const circuit = afterAct(job.circuit, { do: 'remove', part: pot.id });
  const { ask } = job.readings[0]!;
  expect(refitted(job.circuit, circuit, ask)?.setting.knobs).toEqual({});
  const turned = { ...ask, setting: { ...ask.setting, knobs: { [pot.id]: 3 } } };
  expect(refitted(job.circuit, circuit, turned)).toBeNull();
});

it('drops refusals that can no longer be asked, with their times', () => {
  const circuit = afterAct(job.circuit, { do: 'remove', part: pot.id });
  const two = {
    ...job,
    refused: [job.readings[3]!.ask, ...job.refused],
    refusedAt: [moment(1), moment(2)],
  };
  const next = rewired(two, { circuit }, words, moment(40));
  const refused = two.refused.map((ask) => refitted(job.circuit, circuit, ask));
  expect(refused.map((ask) => ask === null)).toEqual([true, false]);
  expect(next.refused).toEqual([refused[1]]);
  expect(next.refusedAt).toEqual([moment(2)]);
});

it('adds no field where there is nothing to keep', () => {
  const empty = emptyJob();
  expect(Object.keys(rewired(empty, { circuit: empty.circuit }, words, moment(1)))).toEqual(
    Object.keys(empty),
  );
});
