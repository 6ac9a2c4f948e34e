// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, configure, render, screen } from '@testing-library/react';
import { afterEach, expect, it, vi } from 'vitest';
import { SheetsSection } from '@/app/_docket/sheets/SheetsSection';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import type { SharedLook } from '@/lib/layout/layoutSearch';
import { InJob, pricedNow } from '@/tests/app/_docket/inJob';
import { clearScreens, screenStore } from '@/tests/app/_screens/screens';
import { sharedJob } from '@/tests/fixtures/sharedJob';

vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});

configure({ defaultHidden: true });
afterEach(() => {
  cleanup();
  clearScreens();
});

const input = sharedJob();
const priced = pricedNow(input);

function section(shared: SharedLook) {
  const last = priced.lastPriced === null ? null : { ...priced.lastPriced, shared };
  return (
    <NumberLocale value="en-US">
      <MeasuresContext value={measuresOf(input.workshop)}>
        <InJob input={input} priced={{ ...priced, lastCosted: last, lastPriced: last }}>
          <SheetsSection />
        </InJob>
      </MeasuresContext>
    </NumberLocale>
  );
}

it('shared sheets say in one place that fewer are looked for and what was found, and the focus stays', async () => {
  await act(() => screenStore().open());
  const spared = { sheets: 0, rollMm: null };
  const { rerender } = render(section({ isLooking: true, spared, drawn: [] }));
  const says = screen.getByText('Looking for fewer sheets…');
  expect(says).toHaveAttribute('role', 'status');
  const fold = screen.getByRole('button', { name: 'Other papers' });
  fold.focus();
  rerender(section({ isLooking: false, spared: { sheets: 1, rollMm: null }, drawn: [] }));
  expect(says).toHaveTextContent('1 sheet fewer found; the price follows.');
  expect(fold).toHaveFocus();
});
