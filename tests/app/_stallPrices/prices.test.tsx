// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { PricesPart } from '@/app/_stallPrices/PricesPart';
import { shopSchema } from '@/shared/schemas/shop';
import type { StallDay } from '@/shared/schemas/stallDay';
import { bodyOf, enter, screenStore } from '@/tests/app/_screens/screens';
import { fairAnswer } from '@/tests/fixtures/stallAnswer';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';

const DAY = 'spring-fair';
const Room = ({ hasPlan = true }: Readonly<{ hasPlan?: boolean }>) => (
  <WithWorkspace>
    {(workspace) => {
      const stallDay = workspace.stallDays[DAY];
      if (stallDay === undefined) throw new Error('no fair');
      return (
        <>
          <h1>The fair</h1>
          <PricesPart
            {...{ workspace, stallDay, id: DAY }}
            answer={hasPlan ? fairAnswer : null}
            numeral={5}
          />
        </>
      );
    }}
  </WithWorkspace>
);
const prices = (): StallDay['prices'] => bodyOf('stallDay', DAY).prices;
const press = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));
const type = async (box: HTMLElement, text: string) => {
  await userEvent.clear(box);
  if (text !== '') await userEvent.type(box, text);
  await userEvent.tab();
};

describe('the prices of a stall day', () => {
  it('are told in one line', async () => {
    await enter(<Room />);
    expect(screen.getByText('Shirts 28, 31 from 2XL; Mugs 16')).toBeVisible();
  });

  it('wait for the plan', async () => {
    await enter(<Room hasPlan={false} />);
    expect(screen.getByText('They come with the plan.')).toBeVisible();
  });

  it('stand between their neighbours, of which one is taken for all designs of these sizes', async () => {
    await enter(<Room />);
    await press('Each price and its neighbours');
    const shirts = within(await screen.findByRole('region', { name: 'Shirts, S to XL' }));
    // 26.17 without tax, fees 0.60, bag 0.19 and a making of about 6.56 leave 18.82.
    expect(shirts.getByText(/leaves 18\.8\d a piece, break-even at 31 pieces/)).toBeVisible();
    expect(shirts.getByText('recommended')).toBeVisible();
    // What another price earns rests on as many buying.
    expect(shirts.getAllByText(/the day earns [\d.]+ more if as many buy/)).not.toHaveLength(0);
    await press('Take 30 for Shirts, S to XL');
    const own = prices().own;
    // Four designs in four sizes; larger ones stay as they were.
    expect(own).toHaveLength(16);
    expect(new Set(own.map(({ size, price }) => `${size} ${price}`))).toEqual(
      new Set(['S 30', 'M 30', 'L 30', 'XL 30']),
    );
  });

  it('hold for a range as a whole where it has one', async () => {
    await enter(<Room />);
    await press('Each price and its neighbours');
    await type(await screen.findByRole('textbox', { name: 'Mugs' }), '15');
    await eventually(() =>
      expect(prices().own).toEqual(
        ['fern', 'otter', 'star-map'].map((lineId) => ({
          ...{ jobId: 'fair-mugs', lineId, size: null, price: 15 },
        })),
      ),
    );
  });

  it('end on fives, or on whole money', async () => {
    await enter(<Room />);
    await press('Each price and its neighbours');
    await userEvent.selectOptions(await screen.findByRole('combobox', { name: 'Prices end on' }), '1');
    expect(screen.getByRole('button', { name: 'Take 29 for Shirts, S to XL' })).toBeVisible();
  });
});

describe('a price under that of a shop', () => {
  /** The shop asked so much for a Fern M, whole minor units. */
  const shopAsked = (eachMinor: number) =>
    act(async () => {
      const { actions } = screenStore();
      const shop = shopSchema.parse({ name: 'Corner shop' });
      actions.edit('Shop', [{ do: 'add', kind: 'shop', id: 'corner', body: shop }]);
      const goods = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
      const row = { goods, grade: 'first', sold: 1, missing: 0, eachMinor } as const;
      const terms = { commissionShare: 0.4, commissionBase: 'withTax', dueMinor: 0 } as const;
      const body = { shopId: 'corner', day: TEST_DAY, currency: 'USD', rows: [row], ...terms };
      actions.note('Statement', [{ kind: 'shopStatement', body }]);
      await screenStore().flush();
    });
  const undercuts = /Corner shop asks 32 for the same, so your stall takes its customers\. Ask as much/;

  it('gives pause, all day and in the last hour, until it is as high', async () => {
    await enter(<Room />);
    await shopAsked(3200);
    await press('Each price and its neighbours');
    const shirts = await screen.findByRole('textbox', { name: 'Shirts, S to XL' });
    expect(shirts).toHaveAccessibleDescription(undercuts);
    expect(screen.getByRole('textbox', { name: 'Mugs' })).not.toHaveAccessibleDescription(/asks/);
    await press('Last hour');
    await userEvent.click(await screen.findByRole('button', { name: 'Lower prices in the last hour' }));
    const late = screen.getByRole('textbox', { name: 'Shirts, S to XL, 28 before' });
    expect(late).not.toHaveAccessibleDescription(/asks/);
    await type(late, '25');
    await eventually(() => expect(late).toHaveAccessibleDescription(undercuts));
  });

  it('does not where the shop asks no more', async () => {
    await enter(<Room />);
    await shopAsked(2800);
    await press('Each price and its neighbours');
    expect(await screen.findByRole('textbox', { name: 'Shirts, S to XL' })).not.toHaveAccessibleDescription(
      /asks/,
    );
  });
});

describe('a set', () => {
  it('is judged beside its pieces one by one', async () => {
    await enter(<Room />);
    await press('Pairs and sets');
    const pair = within(await screen.findByRole('region', { name: 'Two shirts' }));
    expect(pair.getByText(/^It pays while no more than 7\d of 100/)).toBeVisible();
    await type(pair.getByRole('textbox', { name: 'Price of the set' }), '60');
    expect(await pair.findByText(/^One by one they cost 56\.00, so nobody would take the set/)).toBeVisible();
    await type(pair.getByRole('textbox', { name: 'Price of the set' }), '');
    expect(await pair.findByText('It has no price yet, so it cannot be sold.')).toBeVisible();
    expect(prices().sets[0]?.price).toBeNull();
  });

  it('is of the sizes that are chosen; all of them is told as all', async () => {
    await enter(<Room />);
    await press('Pairs and sets');
    await userEvent.click(await screen.findByRole('checkbox', { name: '2XL' }));
    expect(prices().sets[0]?.sizes).toEqual(['S', 'M', 'L', 'XL', '2XL']);
    await userEvent.click(screen.getByRole('checkbox', { name: '3XL' }));
    expect(prices().sets[0]?.sizes).toBeNull();
  });
});

describe('the last hour', () => {
  it('begins an hour before the end, and is told where a piece is worth more at home', async () => {
    await enter(<Room />);
    await press('Last hour');
    await userEvent.click(await screen.findByRole('button', { name: 'Lower prices in the last hour' }));
    expect(prices().lastHour).toEqual({ fromMinute: 960, prices: [] });
    // The stall closes at 17:00.
    fireEvent.change(screen.getByLabelText('From'), { target: { value: '18:30' } });
    expect(
      await screen.findByText(/closed by then on its last day, so these prices never come/),
    ).toBeVisible();
    fireEvent.change(screen.getByLabelText('From'), { target: { value: '16:30' } });
    await eventually(() => expect(screen.queryByText(/closed by then/)).toBeNull());
    const mugs = screen.getByRole('textbox', { name: 'Mugs, 16 before' });
    // (0.6 × 3.918 + 0.60 + 0.0556) ÷ 0.9151 = 3.29.
    await type(mugs, '3');
    expect(
      await screen.findByText('Under 3.29 a piece is worth more at home. Raise it, or take it home.'),
    ).toBeVisible();
    await type(mugs, '18');
    expect(await screen.findByText(/^It is dearer than before the last hour/)).toBeVisible();
    await type(mugs, '12');
    expect(prices().lastHour?.prices).toHaveLength(3);
    await press('No last hour');
    expect(prices().lastHour).toBeNull();
  });
});

describe('seconds', () => {
  it('cost a share of the price, which is told in money, and nothing where nobody says', async () => {
    await enter(<Room />);
    await press('Seconds');
    const share = await screen.findByRole('textbox', { name: /^A second costs, of the price/ });
    await type(share, '50');
    expect(prices().secondsShare).toBe(0.5);
    expect(await screen.findByText('28 is 14, 31 is 15, 16 is 8. On the count, hold a tile.')).toBeVisible();
    await userEvent.clear(share);
    await userEvent.tab();
    expect(prices().secondsShare).toBeNull();
  });
});

describe('a set in the last hour', () => {
  it('that its pieces one by one undercut is on the papers of the day alone, and says so', async () => {
    await enter(<Room />);
    await press('Last hour');
    await userEvent.click(await screen.findByRole('button', { name: 'Lower prices in the last hour' }));
    const shirts = screen.getByRole('textbox', { name: 'Shirts, S to XL, 28 before' });
    // Two of 26 are 52, and the pair is 50.
    await type(shirts, '26');
    await press('Pairs and sets');
    const pair = within(await screen.findByRole('region', { name: 'Two shirts' }));
    expect(pair.queryByText(/^In the last hour/)).toBeNull();
    await type(shirts, '22');
    expect(await pair.findByText(/^In the last hour as many cost 44\.00 one by one/)).toBeVisible();
    await press('List and cards');
    const list = () => within(screen.getByRole('article', { name: /Prices/ }));
    await screen.findByRole('article', { name: /Prices$/ });
    expect(list().getByText('50')).toBeVisible();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Prices of' }), 'late');
    expect(await screen.findByRole('article', { name: /From/ })).toBeVisible();
    expect(list().getByText('22')).toBeVisible();
    expect(list().queryByText('50')).toBeNull();
  });
});

describe('the papers of the prices', () => {
  it('show the list, and the cards one a design', async () => {
    await enter(<Room />);
    await press('List and cards');
    const list = within(await screen.findByRole('article', { name: /Prices$/ }));
    expect(list.getByText('28')).toBeVisible();
    expect(list.getByText('Not your size? Order it here, we post it.')).toBeVisible();
    await userEvent.click(screen.getByRole('checkbox', { name: /to order$/ }));
    expect(list.queryByText(/Order it here/)).toBeNull();
    const papers = screen.getByRole('combobox', { name: 'Paper' });
    // As the rail calls it, and short enough for half a phone.
    expect(papers).toHaveDisplayValue('Table list');
    await userEvent.selectOptions(papers, 'priceCards');
    expect(
      within(await screen.findByRole('article', { name: /Price cards$/ })).getAllByText('28'),
    ).toHaveLength(4);
  });
});
