import { expect, it } from 'vitest';
import { layoutQuestions, thoroughInput } from '@/lib/costing/layoutQuestions';
import { priceJob } from '@/lib/costing/priceJob';
import { LayoutSearch } from '@/lib/layout/layoutSearch';
import { plannedSheets } from '@/lib/layout/plannedSheets';
import { grid, laidOut } from '@/tests/fixtures/costed';
import { sharedJob } from '@/tests/fixtures/sharedJob';

/** The shared job on a roll 500 mm wide, prints up to a metre long. */
const onRoll = () =>
  sharedJob({
    'workshop.sheets.0.form': 'roll',
    'workshop.sheets.0.widthMm': 500,
    'workshop.sheets.0.heightMm': 1_000,
    'workshop.sheets.0.price': {
      value: 2,
      unit: 'money/m',
      date: sharedJob().asOf,
      origin: 'yours',
    },
    'job.lines.0.quantities.0.quantity': 60,
    'job.lines.1.quantities.0.quantity': 90,
  });

it('a roll that prints share is looked at further too, and takes less of it, in drawing and price alike', () => {
  const search = new LayoutSearch();
  const first = onRoll();
  const better = thoroughInput(first, search);
  const { rollMm = null } = search.spared(layoutQuestions(first)) ?? {};
  const lengthOf = (input: typeof first) => plannedSheets(laidOut(input)).roll?.lengthMm ?? 0;
  expect(rollMm).toBeGreaterThan(0);
  expect(lengthOf(first) - lengthOf(better)).toBeCloseTo(rollMm ?? Number.NaN, 6);
  const costOf = (input: typeof first) => priceJob(input, grid).costSheet?.fullCost ?? 0;
  expect(costOf(better)).toBeLessThan(costOf(first));
  // The printed area with its gutters, over the width between the borders: no layout takes less.
  expect(lengthOf(better)).toBeGreaterThan((60 * 111 * 69 + 90 * 90 * 120) / 500);
});
