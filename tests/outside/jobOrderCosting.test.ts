import { describe, expect, it } from 'vitest';
import { wholeJob } from '@/lib/grid/costSheet';
import { present } from '@/lib/grid/present';
import { costed } from '@/tests/fixtures/costed';
import { fixedRate } from '@/tests/fixtures/numbers';
import { ownCost, plainJob } from '@/tests/fixtures/plainJob';

/*
 * Principles of Accounting, vol. 2: Managerial Accounting (OpenStax, Rice University, 2019), sections 4.4 and 4.5.
 * The book spreads overhead over money of labour; the product over hours. With a wage of 1.00 an hour an hour is a
 * unit of labour money, and the two rates are one.
 */
const overhead = { overheadPerYear: 250_000, overheadHours: 100_000, wage: 1 };

describe('overhead of 250,000 over 100,000 of labour', () => {
  const sign = costed(
    plainJob({ sizes: [{ quantity: 1, blank: 0 }], rates: overhead, finishMinutes: 66 * 60 }),
  );

  it('is 2.50 for each unit of labour', () => {
    expect(present(sign.sheet.jobValues, 'overheadRate')).toBe(2.5);
  });

  it('puts 165 on a job with 66 of labour', () => {
    expect(wholeJob(sign.sheet, 'overhead')).toBeCloseTo(165, 9);
  });
});

describe('overhead of 209,040 over 6,240 hours', () => {
  const rates = { overheadPerYear: 209_040, overheadHours: 6240 };

  it('is 33.50 an hour', () => {
    const { sheet } = costed(plainJob({ sizes: [{ quantity: 1, blank: 0 }], rates }));
    expect(present(sheet.jobValues, 'overheadRate')).toBeCloseTo(33.5, 12);
  });

  it('is all applied by the year’s hours', () => {
    const sizes = [{ quantity: 6240, blank: 0 }];
    const { sheet } = costed(plainJob({ sizes, rates, finishMinutes: 60 }));
    expect(wholeJob(sheet, 'overhead')).toBeCloseTo(209_040, 6);
  });
});

/*
 * The vinyl sign, job MAC001. Materials issued to the job are own rows of the order; labour is its paid time. (The
 * book prints a rate of 1.50 beside the overhead of 165; its own rate of 2.50 × 66 is the 165.)
 */
describe('the job cost sheet of a vinyl sign', () => {
  const materials = {
    vinyl: 300,
    black_ink: 100,
    red_ink: 60,
    gold_ink: 60,
    grommets: 120,
    wood: 60,
  };
  const { sheet } = costed(
    plainJob({
      sizes: [{ quantity: 1, blank: 0 }],
      rates: overhead,
      finishMinutes: 66 * 60,
      ownRows: Object.entries(materials).map(([id, amount]) => ownCost(id, 'order', amount)),
      asked: 2000,
    }),
  );

  it.each([
    ['ownCosts', 700],
    ['labour', 66],
    ['overhead', 165],
    ['spoilage', 0],
    ['fullCost', 931],
    ['cash', 700],
    ['price', 2000],
    ['profit', 1069],
  ])('has %s %d', (rowId, value) => {
    expect(wholeJob(sheet, rowId)).toBeCloseTo(value, 9);
  });
});

/*
 * Process costing with a normal loss, which carries no cost of its own: ACCA F2 / FMA study texts, chapter on
 * process costing. A loss of inputs at the press is scrap; what is put in is the blank, work on it is paid by the
 * press, so that lost units have taken it too.
 */
describe('normal spoilage falls on the good units', () => {
  it.each([
    // input, cost of the input, good units, cost of a good unit
    [1000, 4500, 900, 5],
    [100, 4500, 90, 50],
  ])('%d units for %d with a tenth lost: %d at %d', (input, cost, good, each) => {
    const { sheet } = costed(
      plainJob({
        sizes: [{ quantity: good, blank: cost / input }],
        placement: { scrap: fixedRate(0.1, 'share') },
      }),
    );
    expect(wholeJob(sheet, 'entering_1')).toBeCloseTo(input, 9);
    expect(wholeJob(sheet, 'fullCost')).toBeCloseTo(cost, 9);
    expect(sheet.values.fullCost?.[0]).toBeCloseTo(each, 9);
    expect(wholeJob(sheet, 'spoilage')).toBeCloseTo(cost - (good * cost) / input, 9);
  });

  it('1,000 kg for 18,000, 1,800 of labour and 900 of overhead, a tenth lost: 23 a kilogram', () => {
    const { sheet } = costed(
      plainJob({
        sizes: [{ quantity: 900, blank: 18 }],
        // A minute at the press for each kilogram put in: 1.80 of pay and 0.90 of overhead.
        placement: { scrap: fixedRate(0.1, 'share'), handMinutes: fixedRate(1, 'min') },
        rates: { wage: 108, overheadPerYear: 54, overheadHours: 1 },
        finishMinutes: 0,
      }),
    );
    expect(wholeJob(sheet, 'labourExpected')).toBeCloseTo(1800, 9);
    expect(wholeJob(sheet, 'overheadExpected')).toBeCloseTo(900, 9);
    expect(wholeJob(sheet, 'fullCost')).toBeCloseTo(20_700, 9);
    expect(sheet.values.fullCost?.[0]).toBeCloseTo(23, 9);
  });

  it('a tenth of the input is not a tenth of the output: 13,200 in give 11,880', () => {
    const { sheet } = costed(
      plainJob({ sizes: [{ quantity: 11_880, blank: 1 }], placement: { scrap: fixedRate(0.1, 'share') } }),
    );
    expect(wholeJob(sheet, 'entering_1')).toBeCloseTo(13_200, 6);
  });
});
