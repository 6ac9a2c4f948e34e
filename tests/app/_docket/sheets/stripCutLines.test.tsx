// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { cleanup, configure, render, screen, within } from '@testing-library/react';
import { afterEach, expect, it } from 'vitest';
import { SheetsSection } from '@/app/_docket/sheets/SheetsSection';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { InJob, pricedNow } from '@/tests/app/_docket/inJob';
import { clubWith, TODAY } from '@/tests/fixtures/clubJob';

configure({ defaultHidden: true });
afterEach(cleanup);

it('a drawing of a roll says and shows where it is cut across', () => {
  const input = clubWith({
    'workshop.sheets.0.form': 'roll',
    'workshop.sheets.0.widthMm': 609.6,
    'workshop.sheets.0.heightMm': 1000,
    'workshop.sheets.0.price': { value: 1.2, unit: 'money/m', date: TODAY, origin: 'yours' },
    'job.lines.0.orderedQuantity': null,
    'job.lines.0.quantities': [{ size: 'L', quantity: 10 }],
  });
  render(
    <NumberLocale value="en-US">
      <MeasuresContext value={measuresOf(input.workshop)}>
        <InJob input={input} priced={pricedNow(input)}>
          <SheetsSection />
        </InJob>
      </MeasuresContext>
    </NumberLocale>,
  );
  // Backs lie two in a row, four rows to a print: eight and two. Badges lie six in a row: ten in two rows.
  const figures = screen.getAllByRole('figure');
  expect(figures.map(({ textContent }) => textContent)).toEqual([
    expect.stringMatching(/1 × Back picture, 8 on it, cut across at the 3 dashed lines$/),
    expect.stringMatching(/1 × Back picture, 2 on it$/),
    expect.stringMatching(/1 × Chest badge, 10 on it, cut across at the dashed line$/),
  ]);
  const drawings = figures.map((figure) => within(figure).getByRole('img'));
  // A row of 203.2 mm behind a border of 3.175 mm, and half a gutter of 6.35 mm; the next rows 209.55 mm on.
  const lines = drawings.map((drawing) =>
    [...drawing.querySelectorAll('path[d^="M0 "]')].map((path) =>
      Number.parseFloat(path.getAttribute('d')?.slice(3) ?? ''),
    ),
  );
  expect(lines).toEqual([
    [209.55, 419.1, 628.65].map((mm) => expect.closeTo(mm, 6)),
    [],
    [expect.closeTo(3.175 + 88.9 + 3.175, 6)],
  ]);
  expect(drawings[0]).toHaveAccessibleName(/cut across at the 3 dashed lines$/);
});
