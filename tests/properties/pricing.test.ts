import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { applyChanges } from '@/lib/findings/applyChanges';
import { wholeJob } from '@/lib/grid/costSheet';
import { piecesOf } from '@/lib/grid/fillLine';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import { type BreakList, breakList, breakTotal } from '@/lib/price/list/breakList';
import { inversions } from '@/lib/price/list/inversions';
import { judgedJob } from '@/lib/price/list/judgedJob';
import { type Selling, sellingTotal } from '@/lib/price/list/selling';
import { priceTable } from '@/lib/price/priceTable';
import { documentTax } from '@/lib/price/tax/documentTax';
import { taxAdded, taxInside } from '@/lib/price/tax/taxOf';
import { remedies } from '@/lib/studies/breaks/remedies';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { LARGEST_BATCH } from '@/lib/studies/curve/checkCurveRange';
import { priceForMargin } from '@/lib/studies/goalSeek/priceForMargin';
import { priceForPay } from '@/lib/studies/goalSeek/priceForPay';
import { levers } from '@/lib/studies/levers/levers';
import { fromMinor, type MinorUnits } from '@/shared/money';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { changed, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';
import { type JobShape, randomJob } from '@/tests/fixtures/randomJob';
import { cases, patience } from '@/tests/tools/cases';

/** Time for the random jobs on two busy cores. */
const PATIENCE = { timeout: patience(180_000) };

/** Few shapes, so that few workbooks are built. */
const shapes: readonly JobShape[] = [
  { lines: 1, placements: 2, presses: 1, own: 'none' },
  { lines: 1, placements: 1, presses: 1, own: 'formulas' },
  { lines: 2, placements: 2, presses: 2, own: 'drivers' },
];

/** A law tried on so many random jobs of each shape. */
function everyJob(count: number, law: (input: JobInput, turn: number) => void): void {
  for (const shape of shapes) {
    let turn = 0;
    fc.assert(
      fc.property(randomJob(shape), (input) => {
        turn += 1;
        law(input, turn);
      }),
      cases(count),
    );
  }
}

/** Lists of up to eight breaks whose prices fall, rise or stay, in cents. */
const list: fc.Arbitrary<BreakList> = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 9999 })), {
    minLength: 1,
    maxLength: 8,
    selector: ([from]) => from,
  })
  .map((pairs) => {
    const rising = pairs.toSorted(([a], [b]) => a - b);
    const read = breakList(
      rising.map(([from, each], index) => ({ from: index === 0 ? 1 : from + 1, each: each / 100 })),
      'USD',
    );
    if (!read.ok) throw new Error(read.problem.kind);
    return read.value;
  });

const tariff = fc.record({
  currency: fc.constant('USD'),
  start: fc.nat(50_000).map((amount) => amount as MinorUnits),
  each: fc.nat(9999).map((amount) => amount as MinorUnits),
});

const step = fc.constantFrom(0.01, 0.05, 0.5, 1);

describe('price lists', () => {
  it(
    'never let a total fall after a remedy, for 1 to 2,000 pieces',
    () => {
      fc.assert(
        fc.property(list, tariff, step, (drawn, line, ending) => {
          for (const remedy of remedies(drawn, line, ending)) expect(fallsAt(remedy)).toBeNull();
        }),
        cases(120),
      );
    },
    patience(60_000),
  );

  it(
    'have just the inversions that comparing every quantity with every larger one finds',
    () => {
      fc.assert(
        fc.property(list, (drawn) => {
          const last = drawn.breaks.at(-1)?.from ?? 1;
          const totals = Array.from({ length: last }, (_, index) => breakTotal(drawn, index + 1) ?? 0);
          const dear = totals.flatMap((total, index) =>
            totals.slice(index + 1).some((later) => later < total) ? [index + 1] : [],
          );
          const told = inversions(drawn).flatMap(({ from, to }) =>
            Array.from({ length: to - from + 1 }, (_, at) => from + at),
          );
          expect(told).toEqual(dear);
        }),
        cases(120),
      );
    },
    patience(60_000),
  );

  it('never ask more after a cap or a slab starts than the list did, and a cap never more than any larger order', () => {
    fc.assert(
      fc.property(list, fc.integer({ min: 1, max: 500 }), (drawn, n) => {
        const capped = sellingTotal({ kind: 'capped', list: drawn }, n) ?? 0;
        expect(capped).toBeLessThanOrEqual(breakTotal(drawn, n) ?? 0);
        expect(capped).toBeLessThanOrEqual(breakTotal(drawn, n + 1) ?? 0);
      }),
      cases(120),
    );
  });
});

function fallsAt(selling: Selling): number | null {
  let before = 0;
  for (let n = 1; n <= 2000; n += 1) {
    const total = sellingTotal(selling, n) ?? 0;
    if (total < before) return n;
    before = total;
  }
  return null;
}

describe('batches of any job', () => {
  it(
    'are the whole-job column of the job scaled to them, for every size by itself',
    () => {
      everyJob(6, (input) => {
        const job = costed(input);
        const pieces = job.laidOut.job.lines.reduce((sum, line) => sum + piecesOf(line), 0);
        for (const n of [1, Math.ceil(pieces / 3), pieces, 2 * pieces + 1]) {
          // The same mix in fractions, costed size by size; sheets are counted by the grid, not by the layout.
          const scaled = costed({
            ...input,
            job: {
              ...input.job,
              lines: input.job.lines.map((line) => ({
                ...line,
                quantities: line.quantities.map((entry) => ({
                  ...entry,
                  quantity: (entry.quantity * n) / pieces,
                })),
              })),
            },
          });
          const [point] = batchEvaluator(job.laidOut, grid)([{ n, priceEach: 'asked' }]);
          expect(point).not.toBeNull();
          for (const row of ['fullCost', 'fees', 'price', 'profit', 'margin', 'payPerHour'] as const)
            near(point?.[row], wholeJob(scaled.sheet, row), `${row} at ${n}`);
        }
      });
    },
    PATIENCE.timeout,
  );

  it(
    'have the margin that their price was sought for',
    () => {
      everyJob(8, (input, turn) => {
        const job = costed(input);
        const wanted = ((turn * 37) % 400) / 1000;
        const n = 1 + (turn % 50);
        const price = priceForMargin(job, grid, n, wanted);
        if (!price.ok) return expect(price.problem.kind).toBe('nothingLeft');
        const [point] = batchEvaluator(job.laidOut, grid)([{ n, priceEach: price.value.each }]);
        return expect(Math.abs((point?.margin ?? 1) - wanted)).toBeLessThan(1e-9);
      });
    },
    PATIENCE.timeout,
  );

  it(
    'pay the hour that their price was sought for',
    () => {
      everyJob(8, (input, turn) => {
        const job = costed(input);
        const wanted = (turn * 7) % 60;
        const n = 1 + (turn % 50);
        const price = priceForPay(job, grid, n, wanted);
        if (!price.ok) return expect(price.problem.kind).toBe('noSuchPrice');
        // A price of nothing or less cannot be typed; the grid takes it for undecided.
        if (price.value.each <= 0) return undefined;
        const [point] = batchEvaluator(job.laidOut, grid)([{ n, priceEach: price.value.each }]);
        return near(point?.payPerHour, wanted, `pay at ${n}`, 1e-6);
      });
    },
    PATIENCE.timeout,
  );
});

describe('price tables', () => {
  it(
    'leave no quantity inside a break below the target margin',
    () => {
      everyJob(4, (input) => {
        const job = costed(
          changed(input, {
            'workshop.policy.breaks': [1, 4, 9, 20],
            ...Object.fromEntries(
              input.job.lines.map((_, index) => [`job.lines.${index}.selling`, 'capped'] as const),
            ),
          }),
        );
        const table = priceTable(job, grid);
        const { currency, rates } = { ...job.laidOut.job.workshop, rates: job.laidOut.job.rates };
        for (const line of job.laidOut.job.lines) {
          const evaluate = caseEvaluator(judgedJob(job, line), line, grid);
          const [size] = line.sizes;
          if (size === undefined) continue;
          const cells = table.filter((cell) => cell.lineId === line.line.id && cell.size === size.size);
          for (const cell of cells) {
            const last = cell.to ?? LARGEST_BATCH;
            const quantities = [
              ...Array.from({ length: Math.min(last - cell.from + 1, 40) }, (_, at) => cell.from + at),
              ...(cell.to === null ? [100, 499, 500, 1999, 2000] : []),
            ];
            const columns = evaluate(
              quantities.map((batch) => ({ size, batch, askedPrice: fromMinor(cell.price, currency) })),
            );
            columns.forEach(({ margin }, index) => {
              expect(margin, `${cell.from} at ${quantities[index]}`).toBeGreaterThanOrEqual(
                rates.targetMargin.value - 1e-9,
              );
            });
          }
        }
      });
    },
    PATIENCE.timeout,
  );
});

describe('levers', () => {
  it(
    'do what they promise when they are taken',
    () => {
      const club = fc.record({
        quantity: fc.integer({ min: 1, max: 60 }),
        price: fc.integer({ min: 14, max: 30 }),
        scrap: fc.integer({ min: 0, max: 9 }),
        wage: fc.integer({ min: 8, max: 40 }),
        badge: fc.integer({ min: 30, max: 45 }),
        session: fc.option(fc.integer({ min: 5, max: 80 })),
        lot: fc.constantFrom(1, 12),
      });
      fc.assert(
        fc.property(club, ({ quantity, price, scrap, wage, badge, session, lot }) => {
          const rate = (value: number, unit: string) => ({
            value,
            unit,
            date: '2026-11-25',
            origin: 'yours',
          });
          const input = clubWith({
            'job.lines.0.quantities': [
              { size: 'M', quantity },
              { size: 'XL', quantity: 7 },
            ],
            'job.lines.0.orderedQuantity': quantity + 7,
            'job.lines.0.askedPrice': price,
            'job.lines.0.placements.1.scrap': rate(scrap / 100, 'share'),
            'job.lines.0.placements.1.prints.0.widthMm': badge * 2,
            'job.lines.0.placements.1.prints.0.heightMm': badge * 2,
            'job.piecesPerSession': session,
            'blank:white-shirt.sizes.1.packSize': lot,
            'workshop.rates.wage': rate(wage, 'money/h'),
          });
          const before = figures(input);
          for (const lever of levers(input, costed(input), grid)) {
            const taken = figures(jobInputSchema.parse(applyChanges(input, lever.changes)));
            near(taken.margin - before.margin, lever.gain.margin, `${lever.id} margin`);
            near(taken.payPerHour - before.payPerHour, lever.gain.payPerHour, `${lever.id} pay`);
          }
        }),
        cases(3),
      );
    },
    PATIENCE.timeout,
  );
});

describe('tax', () => {
  const amount = fc.integer({ min: 0, max: 1e9 }).map((value) => value as MinorUnits);
  const share = fc.integer({ min: 0, max: 3000 }).map((value) => value / 1e4);

  it('that was added is found inside again, to the cent', () => {
    fc.assert(
      fc.property(amount, share, (net, tax) => {
        const added = taxAdded(net, tax);
        expect(taxInside(added.with, tax)).toEqual(added);
      }),
      cases(1000),
    );
  });

  it('of the lines adds to that of the document, each within a minor unit of its own', () => {
    const line = fc.record({ amount, tax: fc.constantFrom(0, 0.05, 0.07, 0.2) });
    const terms = fc.record({
      currency: fc.constantFrom('USD', 'JPY', 'KWD'),
      mode: fc.constantFrom('added', 'inside'),
      rounding: fc.constantFrom('line', 'document'),
    });
    fc.assert(
      fc.property(fc.array(line, { maxLength: 12 }), terms, (lines, how) => {
        const answer = documentTax(lines, how);
        expect(answer.lines.reduce((sum, { tax }) => sum + tax, 0)).toBe(answer.total.tax);
        expect(answer.total.without + answer.total.tax).toBe(answer.total.with);
        answer.lines.forEach(({ tax }, index) => {
          const { amount: own = 0, tax: part = 0 } = lines[index] ?? {};
          const exact = how.mode === 'added' ? own * part : (own * part) / (1 + part);
          expect(Math.abs(tax - exact)).toBeLessThanOrEqual(1);
        });
      }),
      cases(500),
    );
  });
});

/** What the whole way of a job gives, also where prices are withheld for want of time. */
function figures(input: JobInput): { readonly margin: number; readonly payPerHour: number } {
  const { costSheet } = priceJob(input, grid);
  if (costSheet === null) throw new Error('the job is stopped');
  return { margin: wholeJob(costSheet, 'margin'), payPerHour: wholeJob(costSheet, 'payPerHour') };
}

/** Equal but for floating-point noise in the size of the figures. */
function near(value: number | undefined, expected: number, what: string, noise = 1e-9): void {
  expect(Math.abs((value ?? Number.NaN) - expected), `${what}: ${value} and ${expected}`).toBeLessThanOrEqual(
    noise * Math.max(1, Math.abs(expected)),
  );
}
