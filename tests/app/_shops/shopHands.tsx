import { act, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { ShopScreen } from '@/app/_shops/ShopScreen';
import { foldStock } from '@/lib/stock/foldStock';
import { type Shop, shopSchema } from '@/shared/schemas/shop';
import { enter, screenStore } from '@/tests/app/_screens/screens';

/* A shop on its screen, and what is done there with hands. */

export const actions = () => screenStore().actions;
const getState = () => screenStore().getState();
export const noted = () => getState().entries;
export const shopNow = () => getState().kinds.shop.bodies.corner;

/** A shop that sells by the stall's way of selling, 7 % tax inside, and keeps 40 %. */
export async function shop(terms: Partial<Shop> = {}) {
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

export const click = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));
export const field = (within_: HTMLElement, name: string) => within(within_).getByRole('textbox', { name });
export const form = (name: string) => screen.getByRole('form', { name });

export async function bring(pieces: string, counted: string | null) {
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

export async function state(sold: string, missing: string, price: string | null) {
  await click('Note a statement');
  const statement = form('Statement');
  if (sold !== '') await userEvent.type(field(statement, 'Sold'), sold);
  if (missing !== '') await userEvent.type(field(statement, 'Missing'), missing);
  if (price !== null) await userEvent.type(field(statement, 'Its price'), price);
  return statement;
}

export const shelf = () =>
  foldStock([...noted().stockMove, ...noted().stockTransfer, ...noted().stockCount])
    .filter(({ item }) => item.kind === 'finished')
    .map(({ place, quantity }) => `${place.kind} ${quantity}`);
