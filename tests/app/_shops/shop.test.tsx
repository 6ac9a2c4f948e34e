// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { ShopScreen } from '@/app/_shops/ShopScreen';
import { ShopsScreen } from '@/app/_shops/ShopsScreen';
import { foldStock } from '@/lib/stock/foldStock';
import type { Shop } from '@/shared/schemas/shop';
import { shopSchema } from '@/shared/schemas/shop';
import { clearScreens, enter, screenStore } from '@/tests/app/_screens/screens';

const push = vi.hoisted(() => vi.fn());
vi.mock('next/navigation', () => ({
  usePathname: () => '/stall/shops/corner',
  useRouter: () => ({ push }),
}));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});

afterEach(() => {
  cleanup();
  clearScreens();
  push.mockClear();
});

const { actions, getState } = {
  actions: () => screenStore().actions,
  getState: () => screenStore().getState(),
};
const noted = () => getState().entries;
const shopNow = () => getState().kinds.shop.bodies.corner;

/** A shop that sells by the stall's way of selling, 7 % tax inside, and keeps 40 %. */
async function shop(terms: Partial<Shop> = {}) {
  await enter(<ShopScreen shopId="corner" />);
  act(() => {
    const body = shopSchema.parse({
      name: 'Corner shop',
      channelId: 'stall',
      commissionShare: 0.4,
      ...terms,
    });
    actions().edit('Shop', [{ do: 'add', kind: 'shop', id: 'corner', body }]);
  });
}

const click = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));
const field = (within_: HTMLElement, name: string) => within(within_).getByRole('textbox', { name });
const form = (name: string) => screen.getByRole('form', { name });

async function bring(pieces: string, counted: string | null) {
  await click('Bring goods there');
  const out = form('Bring goods there');
  await userEvent.selectOptions(
    within(out).getByRole('combobox', { name: 'Design' }),
    'Fern shirt, Spring Fair shirts',
  );
  await userEvent.selectOptions(within(out).getByRole('combobox', { name: 'Size' }), 'M');
  await userEvent.type(field(out, 'How many'), pieces);
  if (counted !== null) await userEvent.type(field(out, 'Counted at home before'), counted);
  await userEvent.click(within(out).getByRole('button', { name: 'Note it' }));
}

async function state(sold: string, missing: string, price: string | null) {
  await click('Note a statement');
  const statement = form('Statement');
  if (sold !== '') await userEvent.type(field(statement, 'Sold'), sold);
  if (missing !== '') await userEvent.type(field(statement, 'Missing'), missing);
  if (price !== null) await userEvent.type(field(statement, 'Its price'), price);
  return statement;
}

const shelf = () =>
  foldStock([...noted().stockMove, ...noted().stockTransfer, ...noted().stockCount])
    .filter(({ item }) => item.kind === 'finished')
    .map(({ place, quantity }) => `${place.kind} ${quantity}`);

describe('goods on consignment', () => {
  it('are counted at home before they leave, for nobody counted them yet', async () => {
    await shop();
    await bring('6', null);
    expect(noted().stockTransfer).toEqual([]);
    expect(screen.getByText('Nobody counted them yet.')).toBeInTheDocument();
    await userEvent.type(field(form('Bring goods there'), 'Counted at home before'), '8');
    await click('Note it');
    expect(shelf().sort()).toEqual(['home 2', 'shop 6']);
    expect(screen.getByText(/at no price told yet/)).toBeInTheDocument();
    // More than lie there is not sent, and fewer without counting again.
    await bring('3', null);
    expect(shelf().sort()).toEqual(['home 2', 'shop 6']);
    await userEvent.clear(field(form('Bring goods there'), 'How many'));
    await userEvent.type(field(form('Bring goods there'), 'How many'), '2');
    await click('Note it');
    expect(shelf().sort()).toEqual(['home 0', 'shop 8']);
  });

  it('are settled to the cent, part by part, and taken back whole', async () => {
    await shop({ statementDays: 30 });
    await bring('6', '6');
    const statement = await state('3', '1', '28');
    // The example's stall takes commission on the price without tax: 84.00 ÷ 1.07 × 40 % = 31.40.
    expect(within(statement).getByRole('status')).toHaveTextContent(
      '84.00 USD less 31.40 USD that the shop keeps: 52.60 USD due.',
    );
    await click('Note the statement');
    expect(shelf().sort()).toEqual(['home 0', 'shop 2']);
    expect(noted().shopStatement.map(({ body }) => body.dueMinor)).toEqual([5260]);
    expect(screen.getByText(/56\.00 USD at its last prices/)).toBeInTheDocument();

    await click(/Note a payment/);
    const amount = field(form('Payment'), 'How much');
    expect(amount).toHaveValue('52.60');
    await userEvent.clear(amount);
    await userEvent.type(amount, '20');
    await click('Note the payment');
    expect(screen.getByText(/20\.00 USD paid, 32\.60 USD open/)).toBeInTheDocument();

    await click(/Take back the statement/);
    expect(noted().shopStatement).toEqual([]);
    expect(noted().shopPayment).toEqual([]);
    expect(shelf().sort()).toEqual(['home 0', 'shop 6']);
    // Undo counts them again.
    await act(async () => {
      await actions().undo();
    });
    expect(noted().shopStatement).toHaveLength(1);
    expect(shelf().sort()).toEqual(['home 0', 'shop 2']);
  });

  it('cannot be reckoned before the terms are set, and the sentence says where', async () => {
    await shop({ channelId: null });
    await bring('6', '6');
    await state('3', '', '28');
    await click('Note the statement');
    expect(noted().shopStatement).toEqual([]);
    expect(screen.getByRole('button', { name: 'Note the statement' })).toHaveAccessibleDescription(
      /Choose the way of selling first, under Terms/,
    );
  });

  it('want a price for what is sold, for none is made up', async () => {
    await shop();
    await bring('6', '6');
    await state('3', '', null);
    await click('Note the statement');
    expect(noted().shopStatement).toEqual([]);
  });

  it('come home, and then the shop can be removed', async () => {
    await shop();
    await bring('6', '6');
    expect(screen.queryByRole('button', { name: 'Remove Corner shop' })).toBeNull();
    await click('Bring goods home');
    await click('Note it');
    expect(shelf().sort()).toEqual(['home 6', 'shop 0']);
    await click('Remove Corner shop');
    expect(shopNow()).toBeUndefined();
    await click('Bring it back');
    expect(shopNow()?.name).toBe('Corner shop');
  });

  it('follow the shop to its new name in one step, and never to a name that is taken', async () => {
    await shop();
    act(() => {
      const body = shopSchema.parse({ name: 'Harbour shop' });
      actions().edit('Shop', [{ do: 'add', kind: 'shop', id: 'harbour', body }]);
    });
    await bring('6', '6');
    const rename = async (name: string) => {
      await userEvent.click(screen.getByTitle('Rename'));
      const title = screen.getByRole('textbox', { name: 'Name of the shop' });
      await userEvent.clear(title);
      await userEvent.paste(name);
      await userEvent.keyboard('{Enter}');
    };
    await rename('Harbour shop');
    expect(shopNow()?.name).toBe('Corner shop');
    expect(screen.getByRole('alert')).toHaveTextContent('There is a shop “Harbour shop” already');
    await rename('Mill shop');
    expect(shopNow()?.name).toBe('Mill shop');
    expect(screen.getByText('6 pieces')).toBeInTheDocument();
  });
});

describe('the shops', () => {
  it('are begun by their name, each name once', async () => {
    await enter(<ShopsScreen />);
    expect(screen.getByText('No shop sells for you yet.')).toBeInTheDocument();
    await click('New shop');
    await userEvent.type(screen.getByRole('textbox', { name: 'Name of the shop' }), 'Corner shop');
    await click('Add');
    expect(push).toHaveBeenCalledWith(expect.stringMatching(/^\/stall\/shops\/.+/));
    expect(screen.getByRole('link', { name: 'Corner shop' })).toBeInTheDocument();
    push.mockClear();
    await click('Add');
    expect(push).not.toHaveBeenCalled();
  });
});
