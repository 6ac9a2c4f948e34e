import { describe, expect, it } from 'vitest';
import { dayOf } from '@/app/_clock/dayOf';
import { firstDocuments } from '@/app/_store/firstDocuments';
import { approvedVersions } from '@/lib/artwork/approvedVersions';
import { priceJob } from '@/lib/costing/priceJob';
import { exampleApprovals } from '@/lib/examples/exampleApprovals';
import type { ExampleDocument } from '@/lib/examples/exampleDocuments';
import { exampleFiles } from '@/lib/examples/exampleFiles';
import { addDays } from '@/shared/days';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { grid } from '@/tests/fixtures/costed';

/** What the makers of the examples expect of them, by id and weight; `clubFindings.test.ts` says why. */
const expected: Readonly<Record<string, readonly string[]>> = {
  'club-order': [
    'ART-01 note',
    'ART-04 note',
    'ART-13 note',
    'ART-14 caution',
    'LAY-08 note',
    'PLC-07 note',
    'REC-12 caution',
    'SUB-12 note',
    'TIM-02 note',
  ],
  'fair-shirts': ['REC-12 caution'],
  'fair-mugs': ['REC-12 caution'],
};

/** Every weekday twice. */
const fortnight = Array.from({ length: 14 }, (_, index) => `${addDays('2026-12-21', index)}T12:00`);

const visits = [
  ...fortnight,
  '2028-02-29T23:59',
  '2026-12-31T23:59',
  // Nights in which clocks are put forward or back: North America, Europe, New Zealand.
  '2027-03-14T01:59',
  '2027-11-07T01:30',
  '2027-03-28T02:30',
  '2027-10-31T02:30',
  '2027-04-04T02:30',
  '2027-09-26T01:59',
];

describe('the examples of a first visit', () => {
  it.each(visits)('on %s have the findings of any other day', async (visit) => {
    const moment = new Date(`${visit}:00`);
    const inputs = jobsOf(await firstDocuments(moment, 'en-US'), dayOf(moment));
    expect(Object.fromEntries(inputs.map(([id, input]) => [id, findingsOf(input)]))).toEqual(expected);
  });
});

describe('the example files', () => {
  it('have the same findings as the examples of a first visit', () => {
    const read = Object.entries(exampleFiles()).map(([file, input]) => [
      file.replace('.json', ''),
      findingsOf(input),
    ]);
    expect(Object.fromEntries(read)).toEqual(expected);
  });
});

const findingsOf = (input: JobInput): readonly string[] =>
  priceJob(input, grid)
    .findings.map(({ id, severity }) => `${id} ${severity}`)
    .sort();

function jobsOf(
  documents: readonly ExampleDocument[],
  asOf: string,
): readonly (readonly [string, JobInput])[] {
  const bodies = (kind: ExampleDocument['kind']) =>
    Object.fromEntries(documents.filter((one) => one.kind === kind).map(({ id, body }) => [id, body]));
  const [workshop] = Object.values(bodies('workshop'));
  return Object.entries(bodies('job')).map(([id, job]) => [
    id,
    jobInputSchema.parse({
      ...{ asOf, workshop, blanks: bodies('blank'), artworks: bodies('artwork'), job },
      approvedVersions: approvedVersions(exampleApprovals()),
    }),
  ]);
}
