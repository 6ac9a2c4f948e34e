import { describe, expect, it } from 'vitest';
import { blanksOfRun } from '@/lib/making/standard/blanksOfRun';
import { jobChangedSince } from '@/lib/making/standard/jobDigest';
import { type GoodOutput, standardFor } from '@/lib/making/standard/standardFor';
import { standardOf } from '@/lib/making/standard/standardOf';
import { type RunStandard, runStandardSchema, type StandardWork } from '@/shared/schemas/making/runPapers';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith, mugs } from '@/tests/fixtures/clubJob';
import { jobsOf, ownBlock, planned, runAsked } from '@/tests/fixtures/clubRun';

const cents = (amount: number) => Math.round(amount * 100) / 100;
const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);

function frozen(
  fields: Readonly<Record<string, unknown>> = {},
  inputs?: Readonly<Record<string, JobInput>>,
): RunStandard {
  const asked = runAsked({ ownBlocks: [ownBlock('2026-12-05', 480, 900)], ...fields }, inputs);
  return standardOf({
    ...{ runId: 'run-1', run: asked.run, jobs: jobsOf(asked), plan: planned(asked) },
    ...{ number: { count: 1, letter: 'A' }, issuedOn: '2026-11-25' },
  });
}

function first(standard: RunStandard): StandardWork {
  const [work] = standard.works;
  if (work === undefined) throw new Error('no work');
  return work;
}

const sizesOf = (work: StandardWork) => work.lines.flatMap(({ sizes }) => sizes);

describe('the standard of the worked run', () => {
  const standard = frozen();
  const work = first(standard);

  it('is a paper by its schema', () => {
    expect(runStandardSchema.parse(standard)).toEqual(standard);
  });

  it('draws 39.52 blanks at 4.8297 on average', () => {
    const sizes = sizesOf(work);
    const drawn = sum(sizes.map(({ wanted, blanksEach }) => wanted * blanksEach));
    // 37 ÷ (0.965 × 0.98 × 0.99) = 39.5197.
    expect(cents(drawn)).toBe(39.52);
    const cost = sum(sizes.map(({ wanted, blanksEach, price }) => wanted * blanksEach * price));
    // (32 × 4.60 + 4 × 6.10 + 7.10) ÷ 37 = 178.70 ÷ 37.
    expect(cost / drawn).toBeCloseTo(4.8297, 4);
    expect(sizes.map(({ chance }) => Math.round(chance * 1e5))).toEqual(Array(6).fill(93624));
  });

  it('takes the blanks of its cover: 40, 45 or 50', () => {
    expect(sizesOf(work).map(({ take }) => take)).toEqual([5, 11, 13, 10, 5, 1]);
    const expected = sizesOf(first(frozen({ cover: 'expected' })));
    expect(expected.map(({ take }) => take)).toEqual([4, 10, 12, 9, 4, 1]);
    const sure = sizesOf(first(frozen({ cover: 'sure' })));
    expect(sure.map(({ take }) => take)).toEqual([6, 12, 14, 10, 6, 2]);
  });

  it('prints 52.90 sheets at 0.14, two of them tests, with 35.10 mL at 0.16', () => {
    expect([cents(work.sheets.quantity), work.sheets.price, work.sheets.tests]).toEqual([52.9, 0.14, 2]);
    expect([cents(work.ink.mL), work.ink.pricePerMl, work.ink.sessionMl]).toEqual([35.1, 0.16, 4]);
  });

  it('takes 452.28 min at 18 an hour, element by element, and 4.20 of overhead', () => {
    expect(cents(work.labour.minutes)).toBe(452.28);
    expect(work.labour.minutes / 60).toBeCloseTo(7.538, 4);
    expect([work.labour.wagePerHour, work.overheadPerHour]).toEqual([18, 4.2]);
    expect(work.labour.elements.map(({ element, minutes }) => [element, cents(minutes)])).toEqual([
      ['enquiry', 40],
      ['art', 45],
      ['proof', 15],
      ['setUp', 25],
      ['sheets', 52.9],
      // 41.124 × 2.4 + 37.755 × 2.1.
      ['presses', 177.98],
      ['finish', 44.4],
      ['pack', 12],
      ['cleanDown', 10],
      ['deliver', 30],
    ]);
    expect(sum(work.labour.elements.map(({ minutes }) => minutes))).toBeCloseTo(work.labour.minutes, 9);
  });

  it('costs 411.79, sells for 711.50 and leaves 288.37', () => {
    expect([cents(work.reprints), work.freight, cents(work.fullCost)]).toEqual([6.22, 9.5, 411.79]);
    expect(work.revenue).toBeCloseTo(711.5, 10);
    // 711.50 × 1.07 × 0.029 × 0.5 + 0.30.
    expect(cents(work.fees)).toBe(11.34);
    expect(cents((work.revenue ?? 0) - work.fees - work.fullCost)).toBe(288.37);
    const parts =
      sum(sizesOf(work).map(({ wanted, blanksEach, price }) => wanted * blanksEach * price)) +
      work.sheets.quantity * work.sheets.price +
      work.ink.mL * work.ink.pricePerMl +
      (work.labour.minutes / 60) * (work.labour.wagePerHour + work.overheadPerHour);
    expect(parts + work.freight + work.otherCost + work.reprints).toBeCloseTo(work.fullCost, 9);
    // Packaging 9.05, drive 7.20, tape and paper 5.13, power 0.37, wear 3.09.
    expect(cents(work.otherCost)).toBe(24.84);
  });

  it('enters 39.12 into the back press and 37.76 into that of the badge', () => {
    const placements = work.lines[0]?.placements ?? [];
    expect(
      placements.map(({ name, entering, scrap, testPresses }) => [name, cents(entering), scrap, testPresses]),
    ).toEqual([
      ['Back picture', 39.12, 0.035, 2],
      ['Chest badge', 37.76, 0.02, 0],
    ]);
  });

  it('presses common sizes first, the one with a single spare last', () => {
    expect(standard.sizes.map(({ size }) => size)).toEqual(['L', 'M', 'XL', 'S', '2XL', '3XL']);
    const own = frozen({ sizesFirst: [{ jobId: 'club', lineId: 'shirts', size: '3XL' }] });
    expect(own.sizes.map(({ size }) => size)).toEqual(['3XL', 'L', 'M', 'XL', 'S', '2XL']);
  });
});

describe('a heating-up that was accepted', () => {
  it('is in the standard with 35 min and 4 mL, as the sums have it of a job priced so', () => {
    // 223 min in one heating-up fit none of 160.
    const short = ['2026-12-05', '2026-12-06', '2026-12-07'].map((on) => ownBlock(on, 1080, 160));
    const twice = first(frozen({ heatings: 2, ownBlocks: short }));
    // 37 shirts at 19 a session are two.
    const priced = first(frozen({ ownBlocks: [day('2026-12-05'), day('2026-12-06')] }, atMost19()));
    expect(cents(twice.labour.minutes)).toBe(487.28);
    expect(cents(twice.ink.mL)).toBe(39.1);
    expect(twice.fullCost).toBeCloseTo(priced.fullCost, 9);
    expect(twice.otherCost).toBeCloseTo(priced.otherCost, 9);
    expect(twice.reprints).toBeCloseTo(priced.reprints, 9);
    expect(twice.labour.elements).toEqual(
      priced.labour.elements.map((one) => ({ ...one, minutes: expect.closeTo(one.minutes, 9) })),
    );
  });
});

describe('a job changed since', () => {
  const work = first(frozen());

  it('is seen: by a quantity, a price of the blank, a recipe, a rate, a new version of the artwork', () => {
    const changes = [
      { 'job.lines.0.quantities.0.quantity': 5 },
      { 'job.lines.0.askedPrice': 20 },
      { 'job.lines.0.placements.0.recipe.dwellSeconds': 60 },
      { 'workshop.rates.wage.value': 19 },
      { 'artwork:hill-path.version': 2 },
      { 'workshop.presses.0.holdingShare.value': 0.5 },
    ];
    for (const change of changes)
      expect(jobChangedSince(work, clubWith(change)), JSON.stringify(change)).toBe(true);
  });

  it('is not one that another day, a state, a confirmed rate or another machine leaves as it was', () => {
    expect(jobChangedSince(work, club())).toBe(false);
    const changed = clubWith({
      'job.state': 'agreed',
      'workshop.rates.wage.date': '2027-01-31',
      'workshop.name': 'Another name',
    });
    const later = { ...changed, asOf: '2027-02-01', onHand: { 'white-shirt': { M: 3 } } };
    expect(jobChangedSince(work, later)).toBe(false);
  });
});

describe('the standard for what was really made', () => {
  const standard = frozen();
  const output = (made: (wanted: number, size: string) => number, of = standard): readonly GoodOutput[] =>
    of.works.flatMap(({ jobId, lines }) =>
      lines.flatMap(({ lineId, sizes }) =>
        sizes.map(({ size, wanted }) => ({ jobId, lineId, size, good: made(wanted, size) })),
      ),
    );

  it('is the frozen one at the planned output', () => {
    expect(
      standardFor(
        standard,
        output((wanted) => wanted),
      ),
    ).toEqual(standard);
  });

  it('keeps what order, design and session take, and goes with the pieces in the rest', () => {
    // One L fewer: 36 of 37.
    const made = first(
      standardFor(
        standard,
        output((wanted, size) => wanted - Number(size === 'L')),
      ),
    );
    const share = 36 / 37;
    const minutes = Object.fromEntries(made.labour.elements.map((one) => [one.element, cents(one.minutes)]));
    expect(minutes).toMatchObject({ enquiry: 40, art: 45, setUp: 25, pack: 12, cleanDown: 10, deliver: 30 });
    // 36 at 1.2; (39.1245 × 36/37 + 2) × 2.4 + 37.7551 × 36/37 × 2.1; 50.8975 × 36/37 + 2 sheets.
    expect(minutes).toMatchObject({ finish: 43.2, presses: 173.3, sheets: 51.52 });
    expect(made.sheets.quantity).toBeCloseTo(2 + 50.89751 * share, 4);
    expect(cents(made.revenue ?? 0)).toBe(692.5);
    // 19 × 0.015515 less.
    expect(cents(made.fees)).toBe(11.04);
    // 2 % of its 8.0548: blank 4.9133, sheets 0.1926, ink 0.1291, tape and paper 0.1351, 7.2563 min at 22.20 an hour.
    expect(made.reprints).toBeCloseTo(6.2174541 - 0.161095, 6);
    const drawn = sum(sizesOf(made).map(({ wanted, blanksEach }) => wanted * blanksEach));
    expect(drawn).toBeCloseTo(39.51965 * share, 4);
  });

  it('comes near to the sums of a job of so many, where whole sheets and shares do not jump', () => {
    const made = first(
      standardFor(
        standard,
        output((wanted, size) => wanted - Number(size === 'L')),
      ),
    );
    const of36 = first(frozen({}, { club: clubWith({ 'job.lines.0.quantities.2.quantity': 10 }) }));
    // Badges lie four to a sheet: a 37th begins one of its own, 0.27 of which the standard spreads over all.
    expect(Math.abs(made.fullCost - of36.fullCost)).toBeLessThan(0.5);
    expect(made.otherCost).toBeCloseTo(of36.otherCost, 1);
    expect(made.revenue).toBeCloseTo(of36.revenue ?? 0, 9);
  });

  it('adds up whatever came out, nothing or twice as much', () => {
    for (const times of [0, 0.5, 2]) {
      const made = first(
        standardFor(
          standard,
          output((wanted) => Math.floor(wanted * times)),
        ),
      );
      const parts =
        sum(sizesOf(made).map(({ wanted, blanksEach, price }) => wanted * blanksEach * price)) +
        made.sheets.quantity * made.sheets.price +
        made.ink.mL * made.ink.pricePerMl +
        (made.labour.minutes / 60) * (made.labour.wagePerHour + made.overheadPerHour);
      expect(parts + made.freight + made.otherCost + made.reprints).toBeCloseTo(made.fullCost, 9);
      expect(sum(made.labour.elements.map(({ minutes }) => minutes))).toBeCloseTo(made.labour.minutes, 9);
    }
  });
});

describe('a standard of goods made to stock', () => {
  it('has no revenue where no price was asked, and is a paper all the same', () => {
    const asked = { mugs: { ...mugs(), job: withoutPrices(mugs()) } };
    const standard = frozen({}, asked);
    expect(runStandardSchema.parse(standard)).toEqual(standard);
    expect(first(standard).revenue).toBe(null);
    const taken = blanksOfRun(jobsOf(runAsked({}, asked)), 'usual');
    expect(taken).not.toEqual([]);
    expect(taken.every(({ take, wanted }) => take >= wanted)).toBe(true);
  });
});

// Helpers

const day = (on: string) => ownBlock(on, 480, 900);

const atMost19 = () => ({ club: clubWith({ 'job.piecesPerSession': 19 }) });

const withoutPrices = ({ job }: JobInput) => ({
  ...job,
  lines: job.lines.map((line) => ({ ...line, askedPrice: null, upCharges: [] })),
});
