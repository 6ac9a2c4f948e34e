// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useMemo } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { studies } from '@/app/_studies/studies';
import type { StudyAsk } from '@/app/_studies/useStudies';
import type { Job } from '@/shared/schemas/job';
import { clearScreens, screenStore } from '@/tests/app/_screens/screens';
import { grid } from '@/tests/fixtures/costed';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { accepted, approve, enterOrder, form, pay, quote, section, tell } from './inOrder';

vi.mock('next/navigation', () => ({
  usePathname: () => '/orders/club-enquiry',
  useRouter: () => ({ push: () => undefined }),
}));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});
/* What a job takes is answered at once, by the same function that the worker runs. */
vi.mock('@/app/_studies/useStudies', () => ({
  useStudies: (name: string, asks: readonly StudyAsk<'bench'>[]) =>
    useMemo(
      () =>
        new Map(
          name === 'bench'
            ? asks.map((ask) => [ask.key, { ask, answer: studies.bench(ask.input, grid), failure: null }])
            : [],
        ),
      [name, asks],
    ),
}));

afterEach(() => {
  cleanup();
  clearScreens();
});

const changeJob = (to: Partial<Job>) =>
  act(() => {
    screenStore().actions.edit('Change', [
      { do: 'change', kind: 'job', id: 'club-order', to: (now: Job): Job => ({ ...now, ...to }) },
    ]);
  });
const expenses = () =>
  screenStore()
    .getState()
    .entries.expense.map(({ body }) => body);
async function readyToBuy() {
  await enterOrder();
  approve(true);
  await accepted();
  pay(38066);
}
const open = () => userEvent.click(screen.getByRole('button', { name: 'Blanks ordered: Order the blanks' }));

/* The trade's worked example: 45 blanks for 37 good pieces. 39 at 4.60, five at 6.10, one at 7.10: 217.00, freight 9.50. */
const TO_BUY =
  'White shirt, 100 % polyester: 45 to buy (S 5, M 11, L 13, XL 10, 2XL 5, 3XL 1); 37 good pieces and 8 spare';
const COST = 'Blanks and freight come to about 226.50 USD.';

describe('blanks that are to be ordered', () => {
  it('are told in the row with spares and what they come to, as the docket lays them out', async () => {
    await readyToBuy();
    const waits = section('What it waits for');
    expect(waits.getByText(TO_BUY)).toBeVisible();
    expect(waits.getByText(COST)).toBeVisible();
  });

  it('stand in the form, whose cost begins with what the jobs reckon and is noted as it then stands', async () => {
    await readyToBuy();
    await open();
    const blanks = form('Blanks ordered');
    expect(blanks.getByText(TO_BUY)).toBeVisible();
    const cost = blanks.getByLabelText(/^What they cost/);
    expect(cost).toHaveValue('226.50');
    await userEvent.click(blanks.getByRole('button', { name: 'Note it' }));
    expect(expenses()).toMatchObject([
      { kind: 'blanks', amountMinor: 22650, currency: 'USD', day: TEST_DAY },
    ]);
    expect(section('What happened').getByText(/^Blanks ordered/)).toBeVisible();
    // The step is noted, so that nothing is ahead any more.
    expect(screen.queryByText(COST)).toBeNull();
  });

  it('take what was typed, and nothing where the amount was emptied', async () => {
    await readyToBuy();
    await open();
    const cost = form('Blanks ordered').getByLabelText(/^What they cost/);
    await userEvent.clear(cost);
    await userEvent.click(form('Blanks ordered').getByRole('button', { name: 'Note it' }));
    expect(expenses()).toEqual([]);
  });

  it('begin with no cost where they were ordered before, for that would be noted twice', async () => {
    await readyToBuy();
    tell({ what: 'blanksOrdered', note: '' });
    await userEvent.click(screen.getByText('Something else happened'));
    await userEvent.click(screen.getByRole('button', { name: 'Blanks ordered' }));
    expect(form('Blanks ordered').getByLabelText(/^What they cost/)).toHaveValue('');
  });

  it('say that freight is not in it where the job says none', async () => {
    await readyToBuy();
    changeJob({ freightIn: null });
    expect(
      section('What it waits for').getByText(
        'Blanks come to about 217.00 USD; more with freight, which not every job tells. Type it in the job.',
      ),
    ).toBeVisible();
  });
});

describe('money of blanks that are ahead', () => {
  it('is told once a quote is out, and beside the deposit once that is agreed', async () => {
    await enterOrder();
    const money = section('Money');
    expect(money.queryByText(/^Blanks and freight come to/)).toBeNull();
    await quote();
    expect(money.getByText(COST)).toBeVisible();
    cleanup();
    clearScreens();
    await readyToBuy();
    expect(section('Money').getByText(`${COST} The deposit covers that.`)).toBeVisible();
  });

  it('is told where the deposit does not cover it', async () => {
    await readyToBuy();
    changeJob({ freightIn: { value: 200, unit: 'money/order', date: TEST_DAY, origin: 'yours' } });
    // 417.00 less 380.66.
    expect(
      section('Money').getByText(
        'Blanks and freight come to about 417.00 USD. That is 36.34 USD more than the deposit.',
      ),
    ).toBeVisible();
  });
});
