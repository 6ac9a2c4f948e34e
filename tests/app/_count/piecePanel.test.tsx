// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './countStage';
import { fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { fairGoods, saleOf } from '@/tests/fixtures/stallTaps';
import { enterCount, fixPlan, key, tapped, tile } from './inCount';

const click = (element: HTMLElement) => userEvent.click(element);

const goods = { jobId: 'fair-shirts', lineId: 'fern', size: 'L' };

/** Opens what else can become of a Fern L, at 28. */
async function open(more: Parameters<typeof fixPlan>[0] = {}): Promise<void> {
  await fixPlan(more);
  await enterCount();
  await hold();
}
const hold = async () => {
  fireEvent.contextMenu(tile(/^Fern L,/));
  await screen.findByRole('textbox', { name: 'Other price' });
};
const sellAt = async (price: string) => {
  const field = screen.getByRole('textbox', { name: 'Other price' });
  await userEvent.clear(field);
  await userEvent.type(field, price);
  await click(key(/^Sell at it$/));
};

describe('another price', () => {
  it('that looks mistyped is asked about before it is sold at', async () => {
    await open();
    await sellAt('84.01');
    expect(screen.getByRole('alert')).toHaveTextContent(
      '84.01 USD is more than three times the price, 28 USD. Is it typed right?',
    );
    expect(tapped()).toEqual([]);
    await sellAt('9.33');
    expect(screen.getByRole('alert')).toHaveTextContent(
      '9.33 USD is less than a third of the price, 28 USD. Is it typed right?',
    );
    await click(key(/^Sell at it all the same$/));
    expect(tapped()).toEqual([{ what: 'sale', goods, minor: 933, isOwnPrice: true, pay: 'card' }]);
  });

  it.each([
    ['84', 8400],
    ['9.34', 934],
  ])('of %s is sold at once', async (price, minor) => {
    await open();
    await sellAt(price);
    expect(tapped()).toEqual([{ what: 'sale', goods, minor, isOwnPrice: true, pay: 'card' }]);
  });

  it('of nothing leads to a gift, and can be a sale all the same', async () => {
    await open();
    await sellAt('0');
    const asked = within(screen.getByRole('alert'));
    expect(
      asked.getByText('For nothing: was it given away? A gift is counted apart from sales.'),
    ).toBeVisible();
    await click(asked.getByRole('button', { name: 'Given away' }));
    expect(tapped()).toEqual([{ what: 'given', goods }]);
    await hold();
    await sellAt('0');
    await click(key(/^Sell at it all the same$/));
    expect(tapped().at(-1)).toEqual({ what: 'sale', goods, minor: 0, isOwnPrice: true, pay: 'card' });
  });

  it('makes no part of a set, unless the maker says so', async () => {
    await open();
    await sellAt('27');
    await click(tile(/^Fern M,/));
    const pair = () => screen.queryByRole('button', { name: /^Two shirts/ });
    // 27 and 28 for 50.
    expect(pair()).toBeNull();
    await hold();
    await click(screen.getByRole('checkbox', { name: 'May be part of a set too' }));
    await sellAt('27');
    expect(tapped().at(-1)).toEqual({
      ...{ what: 'sale', goods, minor: 2700, isOwnPrice: true, joinsSet: true, pay: 'card' },
    });
    expect(pair()).toHaveTextContent('5');
  });

  it('asks nothing of sets where there are none', async () => {
    await open({ sets: [] });
    expect(screen.queryByRole('checkbox', { name: 'May be part of a set too' })).toBeNull();
  });
});

describe('an exchange', () => {
  it('tells what is left of each, and names what is gone last', async () => {
    const bring = (one: (typeof fairPlan.goods)[number]) => (one.lineId === 'otter' ? 0 : one.bring);
    await open({ goods: fairPlan.goods.map((one) => ({ ...one, bring: bring(one) })) });
    await click(await screen.findByText('Exchange'));
    const choices = [...(screen.getByLabelText('What goes instead') as HTMLSelectElement).options]
      .map(({ text }) => text)
      .filter((text) => / left$/.test(text));
    expect(choices).toHaveLength(fairPlan.goods.length - 1);
    expect(choices).toContain('Fern M, 28, 8 left');
    // Six shirts and a mug.
    expect(choices.slice(-7).every((text) => /^Otter.*, none left$/.test(text))).toBe(true);
    expect(choices.slice(0, -7).some((text) => /none left/.test(text))).toBe(false);
  });
});

it('tells on a tile that more went than was brought, and that it was asked for', async () => {
  await fixPlan({ goods: [{ ...fairGoods('fern', 'L'), bring: 0 }] });
  await enterCount();
  await click(tile(/^Fern L,/));
  expect(tile(/^Fern L,/)).toHaveTextContent('asked 1');
  await hold();
  await click(key(/^Sell one even so, 28$/));
  expect(tapped().at(-1)).toEqual(saleOf(fairGoods('fern', 'L')));
  expect(tile(/^Fern L,/)).toHaveTextContent(/−1 · asked 1$/);
  expect(tile(/^Fern L, 1 more than brought: count as asked for, so far 1$/)).toBeVisible();
});

describe('what was asked for', () => {
  it('is told to be counted', async () => {
    await fixPlan();
    await enterCount();
    await click(key(/^Asked for/));
    await userEvent.type(await screen.findByLabelText('What was it'), 'Youth sizes');
    await click(key(/^Count it$/));
    expect(screen.getByRole('status')).toHaveTextContent('Counted: Youth sizes, 1 so far.');
    await userEvent.type(screen.getByLabelText('What was it'), 'youth sizes');
    await click(key(/^Count it$/));
    expect(screen.getByRole('status')).toHaveTextContent('Counted: youth sizes, 2 so far.');
    await click(key(/^Count it$/));
    expect(screen.getByRole('status')).toHaveTextContent('Counted: something else, 1 so far.');
  });
});

describe('money spent from the tin', () => {
  it('bears what on, and what is taken out does not', async () => {
    await fixPlan();
    await enterCount();
    await click(key(/^More$/));
    await click(await screen.findByText('Tin'));
    await userEvent.type(screen.getByRole('textbox', { name: 'How much' }), '6.50');
    await click(screen.getByRole('radio', { name: 'Taken out' }));
    expect(screen.queryByRole('textbox', { name: 'What on' })).toBeNull();
    await click(screen.getByRole('radio', { name: 'Spent' }));
    await userEvent.type(screen.getByRole('textbox', { name: 'What on' }), 'tape');
    await click(key(/^Into the count$/));
    expect(tapped()).toEqual([{ what: 'tin', cause: 'spent', minor: 650, words: 'tape' }]);
    expect(key(/^Undo/)).toHaveTextContent('Spent 6.50: tape');
  });
});
