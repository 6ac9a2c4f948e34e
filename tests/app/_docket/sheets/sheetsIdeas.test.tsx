// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { SheetsSection } from '@/app/_docket/sheets/SheetsSection';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { type SheetsAnswer, sheetsAnswer } from '@/lib/studies/sheets/sheetsAnswer';
import type { JobInput } from '@/shared/schemas/request';
import { InJob, pricedNow, stoppedSince } from '@/tests/app/_docket/inJob';
import { clearScreens, screenStore } from '@/tests/app/_screens/screens';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

const study = vi.hoisted(() => ({ newest: null as unknown }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});
vi.mock('@/app/_studies/useStudy', () => ({
  useStudy: (name: string) => ({ newest: name === 'sheets' ? study.newest : null, failure: null }),
}));

beforeEach(() => act(() => screenStore().open()));
afterEach(() => {
  cleanup();
  clearScreens();
});

const before = club();
const after = clubWith({ 'job.lines.0.quantities': [{ size: 'L', quantity: 20 }] });

/** The study has ended for these documents, and says that sharing sheets saves. */
function studied(input: JobInput) {
  const found = sheetsAnswer(input, grid);
  const together: SheetsAnswer['together'] = { sheetsLess: 3, rollLessMm: null, saved: 2 };
  study.newest = { input, question: null, answer: { ...found, smaller: [], together } };
}

const section = (input: JobInput, priced = pricedNow(input)) => (
  <NumberLocale value="en-US">
    <MeasuresContext value={measuresOf(input.workshop)}>
      <InJob {...{ input, priced }}>
        <SheetsSection />
      </InJob>
    </MeasuresContext>
  </NumberLocale>
);

const idea = () => screen.queryByRole('button', { name: 'Let prints share sheets' });
const share = () => screen.queryByText(/of the paper is left over/, { selector: '[id=sheets] p' });

it('the sheets say what is left over, and offer an idea, only of the job their headline is of', () => {
  studied(before);
  const { rerender } = render(section(before));
  expect(share()).toBeInTheDocument();
  expect(idea()).toBeEnabled();
  rerender(section(after));
  expect(share()).not.toBeInTheDocument();
  expect(idea()).not.toBeInTheDocument();
  expect(screen.getByText('Looking for ideas…')).toBeVisible();
  studied(after);
  rerender(section(after));
  expect(share()).toBeInTheDocument();
  expect(idea()).toBeInTheDocument();
  expect(screen.queryByText('Looking for ideas…')).not.toBeInTheDocument();
});

it('no idea is offered for a job that has changed and is not costed yet', () => {
  studied(before);
  render(section(after, { ...pricedNow(before) }));
  expect(idea()).not.toBeInTheDocument();
});

it('no idea is offered against a layout while better ones are looked for', () => {
  const spared = { sheets: 0, rollMm: null };
  const looked = (isLooking: boolean) => {
    const priced = pricedNow(before);
    const last = priced.lastCosted && {
      ...priced.lastCosted,
      shared: { isLooking, spared, drawn: [] },
    };
    return section(before, { ...priced, lastCosted: last });
  };
  studied(before);
  const { rerender } = render(looked(true));
  expect(idea()).not.toBeInTheDocument();
  rerender(looked(false));
  expect(idea()).toBeInTheDocument();
});

it('while a stop stands the idea of the last good layout stays in view and cannot be taken', () => {
  studied(before);
  render(section(after, stoppedSince(pricedNow(before))));
  expect(idea()).toHaveAttribute('aria-disabled', 'true');
});
