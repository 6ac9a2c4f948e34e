import fc from 'fast-check';
import { expect, test } from 'vitest';
import { paidPrices } from '@/lib/buying/received/paidPrices';
import { foldLearned } from '@/lib/learning/foldLearned';
import type { LearningDocuments } from '@/lib/learning/learnedFrom';
import type { Lesson } from '@/lib/learning/lesson';
import { type BodyOf, takeBack, takeOver, withEdits } from '@/lib/learning/takeOver';
import { canonicalText } from '@/lib/stored/canonicalText';
import { entriesInForce } from '@/lib/stored/entriesInForce';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import { type Supplier, supplierSchema } from '@/shared/schemas/making/supply';
import { goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import { type StallAudience, stallAudiences } from '@/shared/schemas/sizeMix';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import { clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { actual, clubFacts, clubPressings, hour, noteOf } from '@/tests/fixtures/clubStandard';
import { learnedFrom, learnedRun } from '@/tests/fixtures/learnedRun';
import { cases } from '@/tests/tools/cases';

const share = fc.double({ min: 0, max: 0.5, noNaN: true });
const rate = fc.option(
  fc.record({
    value: share,
    unit: fc.constant('share'),
    date: fc.constant('2026-01-31'),
    origin: fc.constantFrom('typical', 'yours'),
  }),
);

const drawn = fc.record({
  results: fc.array(fc.constantFrom<Pressing['result']>('good', 'good', 'good', 'second', 'scrap'), {
    maxLength: 80,
  }),
  blanks: fc.integer({ min: 1, max: 30_000 }),
  minutes: fc.double({ min: 0, max: 300, noNaN: true }),
  scrap: rate,
  fault: rate,
  price: fc.double({ min: 0, max: 90, noNaN: true }),
  rejected: fc.integer({ min: 0, max: 60 }),
  audience: fc.constantFrom(...stallAudiences),
});

type Drawn = typeof drawn extends fc.Arbitrary<infer Run> ? Run : never;

interface Documents extends LearningDocuments {
  readonly suppliers: readonly { readonly id: string; readonly body: Supplier }[];
}

function documentsOf(run: Drawn): Documents {
  const { workshop, blanks, job } = clubWith({
    'job.lines.0.placements.0.scrap': run.scrap,
    'blank:white-shirt.blankFault': run.fault,
    'blank:white-shirt.sizes.1.price.value': run.price,
  });
  return {
    workshop: { id: 'workshop', body: workshop },
    jobs: [{ id: 'club', body: job }],
    blanks: Object.entries(blanks).map(([id, body]) => ({ id, body })),
    stallDays: [{ id: 'fair', body: fair(run.audience) }],
    suppliers: [
      {
        id: 'mill',
        body: supplierSchema.parse({
          name: 'Mill',
          offers: [{ id: 'm', item: sizeM, tiers: [{ from: 1, each: run.price }] }],
        }),
      },
    ],
  };
}

const sizeM = { kind: 'blank', blankId: 'white-shirt', size: 'M' } as const;

const fair = (audience: StallAudience) =>
  stallDaySchema.parse({
    name: 'Fair',
    ranges: [
      {
        ...{ id: 'shirts', name: 'Shirts', pieces: 40, sizes: { from: 'audience', audience } },
        designs: [{ jobId: 'club', lineId: 'shirts', share: 1 }],
      },
    ],
  });

/** What was learned from runs, and what a bill of the supplier says. */
function lessonsOf(run: Drawn, documents: Documents): readonly Lesson[] {
  const goodsIn = goodsInSchema.parse({
    ...{ day: TODAY, supplierId: 'mill', currency: 'USD' },
    rows: [{ item: sizeM, ordered: 12, counted: 12, faulty: 1, amountMinor: run.blanks }],
  });
  const bodies = <Body>(all: readonly { readonly id: string; readonly body: Body }[]) =>
    Object.fromEntries(all.map(({ id, body }) => [id, body]));
  const { workshop, blanks, suppliers } = documents;
  if (workshop === null) throw new Error('a workshop');
  const paid = paidPrices(
    goodsIn,
    {
      ...{ workshopId: 'workshop', workshop: workshop.body },
      ...{ blanks: bodies(blanks), suppliers: bodies(suppliers) },
    },
    TODAY,
  );
  return [
    ...foldLearned(learnedFrom({ runs: [learnedRun(factsOf(run))], documents, goodsIn: [goodsIn] })),
    ...paid.map(({ lesson }) => lesson),
  ];
}

const factsOf = (run: Drawn) => ({
  ...clubFacts({ reprints: null }),
  pressings: clubPressings().map((entry, at) => ({
    ...entry,
    body: { ...entry.body, result: run.results[at] ?? ('good' as const) },
  })),
  actuals: [
    actual({ of: 'blanks', quantity: 41, amountMinor: run.blanks }),
    actual({ of: 'sheets', quantity: 58, amountMinor: 870 }),
  ],
  hours: [hour(run.minutes, 'setUp'), hour(run.minutes, 'sheets'), hour(run.minutes, 'finish')],
  blankFaults: [
    noteOf('blankFault', {
      runId: 'run',
      blankId: 'white-shirt',
      size: 'M',
      lot: null,
      pieces: 1,
      fault: null,
    }),
  ],
  sheetsPrinted: [
    noteOf('sheetsPrinted', {
      ...{ runId: 'run', standardId: null, jobId: 'club', placementId: null, fault: null },
      ...{ good: 50, rejected: run.rejected },
    }),
  ],
});

const bodyIn =
  ({ workshop, jobs, blanks, stallDays, suppliers }: Documents): BodyOf =>
  (kind, id) =>
    kind === 'workshop'
      ? workshop?.body
      : [...jobs, ...blanks, ...stallDays, ...suppliers].find((one) => one.id === id)?.body;

const edited = (documents: Documents, edits: ReturnType<typeof takeBack>['edits']): Documents => ({
  workshop: documents.workshop && {
    ...documents.workshop,
    body: withEdits(documents.workshop.body, 'workshop', documents.workshop.id, edits),
  },
  jobs: documents.jobs.map(({ id, body }) => ({ id, body: withEdits(body, 'job', id, edits) })),
  blanks: documents.blanks.map(({ id, body }) => ({ id, body: withEdits(body, 'blank', id, edits) })),
  stallDays: documents.stallDays.map(({ id, body }) => ({
    id,
    body: withEdits(body, 'stallDay', id, edits),
  })),
  suppliers: documents.suppliers.map(({ id, body }) => ({
    id,
    body: withEdits(body, 'supplier', id, edits),
  })),
});

test('whatever a run taught, taken back in any order of turns, leaves every document as it was, to the last bit', () => {
  const changed = new Set<string>();
  fc.assert(
    fc.property(drawn, (run) => {
      const before = documentsOf(run);
      let now = before;
      const taken = [];
      for (const lesson of lessonsOf(run, before)) {
        const { edits, body } = takeOver(lesson, bodyIn(now), '2026-12-12');
        now = edited(now, edits);
        taken.push(body);
        for (const { kind, path } of edits) changed.add(`${kind} ${path.at(-1)}`);
      }
      for (const body of taken.toReversed()) {
        const { edits, left } = takeBack(body, bodyIn(now));
        expect(left).toEqual([]);
        now = edited(now, edits);
      }
      expect(canonicalText(now)).toBe(canonicalText(before));
    }),
    cases(100),
  );
  // Nothing would be proved by lessons that change nothing.
  expect([...changed].sort()).toEqual([
    ...['blank blankFault', 'blank finishMinutes', 'blank price', 'job scrap', 'stallDay sizes'],
    ...['supplier each', 'workshop price', 'workshop setUpMinutes', 'workshop sheetMinutes'],
    'workshop sheetReject',
  ]);
});

test('a place that was changed by hand since is left and told', () => {
  const from = learnedFrom();
  const documents = { ...from.documents, suppliers: [] };
  const lesson = foldLearned(from).find(({ subject }) => subject.of === 'scrap');
  if (lesson === undefined) throw new Error('no lesson');
  const { edits, body } = takeOver(lesson, bodyIn(documents), '2026-12-12');
  const byHand = edited(
    documents,
    edits.map((edit) => ({ ...edit, value: null })),
  );
  const back = takeBack(body, bodyIn(byHand));
  expect(back.edits).toEqual([]);
  expect(back.left).toHaveLength(1);
});

test('presses teach the same in any order', () => {
  const facts = clubFacts({ reprints: null });
  const turned = { ...facts, pressings: entriesInForce(facts.pressings.toReversed()) };
  expect(foldLearned(learnedFrom({ runs: [learnedRun(turned)] }))).toEqual(
    foldLearned(learnedFrom({ runs: [learnedRun(facts)] })),
  );
});
