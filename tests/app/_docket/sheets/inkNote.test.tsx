// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, configure, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, it, vi } from 'vitest';
import { SheetsSection } from '@/app/_docket/sheets/SheetsSection';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { InJob, pricedNow } from '@/tests/app/_docket/inJob';
import { clearScreens, screenStore, undo } from '@/tests/app/_screens/screens';
import { aPicture } from '@/tests/fixtures/aPicture';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});

configure({ defaultHidden: true });
afterEach(() => {
  cleanup();
  clearScreens();
});

const noted = () =>
  screenStore()
    .getState()
    .entries.inkPrints.map(({ body }) => body);

async function show(input = club()) {
  await act(() => screenStore().open());
  render(
    <NumberLocale value="en-US">
      <MeasuresContext value={measuresOf(input.workshop)}>
        <InJob input={input} priced={pricedNow(input)}>
          <SheetsSection />
        </InJob>
      </MeasuresContext>
    </NumberLocale>,
  );
  await userEvent.click(screen.getByRole('button', { name: 'Ink and presses' }));
}

it('the prints of a job are noted with the job they are of, and its docket says when', async () => {
  await show();
  await userEvent.click(screen.getByRole('button', { name: 'Note these prints in the ink record' }));
  // 42 back pictures and 39 badges, as inkRunsOf.test.ts works out by hand.
  expect(noted()).toMatchObject([
    { name: 'Ramblers Club shirts: Back picture', prints: 42, jobId: 'club-order', day: TEST_DAY },
    { name: 'Ramblers Club shirts: Chest badge', prints: 39, jobId: 'club-order' },
  ]);
  expect(screen.getByText(/^Noted in the ink record on [^,]+, 2026\./)).toBeVisible();
  await undo();
  expect(noted()).toEqual([]);
  expect(screen.queryByText(/^Noted in the ink record/)).not.toBeInTheDocument();
});

it('the prints of a job that were noted before are not noted twice unseen', async () => {
  await show();
  act(() => {
    const body = { name: 'Back picture', prints: 42, total: 1, widthMm: 200, heightMm: 250, sessions: 1 };
    screenStore().actions.note('Before', [
      { kind: 'inkPrints', body: { ...body, day: '2026-11-03', jobId: 'club-order' } },
      { kind: 'inkPrints', body: { ...body, day: '2026-11-02', jobId: 'fair-mugs' } },
    ]);
  });
  expect(screen.getByText(/^Noted in the ink record on Nov 3, 2026\./)).toBeVisible();
  expect(screen.queryByRole('button', { name: /^Note these prints/ })).not.toBeInTheDocument();
  await userEvent.click(screen.getByRole('button', { name: 'Note them once more' }));
  expect(noted()).toHaveLength(4);
});

it('how the printer prints grey is said where pictures were read, and not of ink that was typed', async () => {
  await show();
  expect(screen.queryByText(/of the grey with black/)).not.toBeInTheDocument();
  cleanup();
  await show(
    clubWith({
      'artwork:hill-path.picture': aPicture(),
      'artwork:hill-path.coverage': null,
      'workshop.printers.0.lightInks': true,
    }),
  );
  expect(screen.getByText(/^Desk printer prints 50 % of the grey with black/)).toHaveTextContent(
    /typical Desk printer has light inks, which are not counted apart/,
  );
});
