// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { SavedTable } from '@/app/_stallDay/stay/SavedTable';
import type { StallDay } from '@/shared/schemas/stallDay';
import { fairAsked } from '@/tests/fixtures/fairAsked';

afterEach(cleanup);

const { stallDay, workshop } = fairAsked;

function inAll(costs: StallDay['costs']) {
  const on = {
    ...{ stallDay: { ...stallDay, costs }, workspace: { workshop }, locale: 'en-US' },
    plan: null,
    amount: (money: number) => money.toFixed(2),
  };
  render(<SavedTable on={on as unknown as StallOnScreen} />);
  const row = screen.getByRole('rowheader', { name: 'in all' }).closest('tr') ?? document.body;
  return within(row)
    .getAllByRole('cell')
    .map(({ textContent }) => textContent);
}

describe('what staying would save, in all', () => {
  it('is by the rows above it, own pay among what is saved', () => {
    const [fee] = stallDay.costs;
    if (fee === undefined || fee.amount.of !== 'typed') throw new Error('the fair has no fee');
    const hours = stallDay.hours.reduce((sum, one) => sum + one.hours, 0);
    const pay = hours * (workshop.rates.wage?.value ?? 0);
    const typed = (money: number) => ({ of: 'typed' as const, money });
    expect(pay).toBeGreaterThan(0);
    expect(
      inAll([
        { ...fee, kind: 'sunk', amount: typed(85) },
        { ...fee, id: 'bed', kind: 'avoidable', amount: typed(40) },
      ]),
    ).toEqual([(40 + pay).toFixed(2), '85.00']);
  });

  it('is not known while a cost is not told, and no sum of a former plan', () => {
    const [fee] = stallDay.costs;
    if (fee === undefined) throw new Error('the fair has no fee');
    expect(inAll([fee, { ...fee, id: 'bed', amount: { of: 'typed', money: null } }])).toEqual([
      'not known yet',
    ]);
  });
});
