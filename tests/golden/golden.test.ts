import { describe, it } from 'vitest';
import { exampleAt } from '@/lib/examples/exampleAt';
import { exampleFiles } from '@/lib/examples/exampleFiles';
import { regionOf } from '@/lib/examples/regionOf';
import { priceTable } from '@/lib/price/priceTable';
import { costed, grid } from '@/tests/fixtures/costed';
import { costSheetText, priceTableText } from './asText';
import { expectGolden } from './goldenFile';

const files = exampleFiles();
const club = files['club-order.json'];
const examples = {
  ...files,
  ...(club === undefined ? {} : { 'club-order-metric.json': exampleAt(club, regionOf('de-DE')) }),
};

describe.each(Object.entries(examples))('the example %s', (file, input) => {
  const folder = file.replace('.json', '');
  const { locale } = input.workshop;

  it('has the cost sheet that was kept', () => {
    expectGolden(`${folder}/cost-sheet.txt`, costSheetText(costed(input).sheet, locale));
  });

  it('has the price table that was kept', () => {
    const job = costed(input);
    expectGolden(
      `${folder}/price-table.txt`,
      priceTableText(priceTable(job, grid), job.sheet.currency, locale),
    );
  });
});
