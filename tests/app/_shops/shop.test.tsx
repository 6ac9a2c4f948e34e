// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './shopStage';
import { act, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { ShopsScreen } from '@/app/_shops/ShopsScreen';
import { shopSchema } from '@/shared/schemas/shop';
import { enter } from '@/tests/app/_screens/screens';
import {
  actions,
  bring,
  click,
  field,
  form,
  noted,
  shelf,
  shop,
  shopNow,
  state,
} from '@/tests/app/_shops/shopHands';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { push } from './shopStage';

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

  it('of a job that was put away and of a size that no job makes any more can go there, in their grade', async () => {
    await shop();
    act(() => {
      const home = { kind: 'home' } as const;
      const note = (size: string, grade: 'first' | 'second', quantity: number) => {
        const item = { kind: 'finished', jobId: 'fair-shirts', lineId: 'fern', size } as const;
        return { kind: 'stockCount', body: { item, place: home, grade, quantity } } as const;
      };
      actions().note('Counted', [note('5XL', 'first', 2), note('5XL', 'second', 3)]);
      actions().edit('Archive it', [
        {
          do: 'change',
          kind: 'job',
          id: 'fair-shirts',
          to: (now) => ({ ...now, archivedOn: TEST_DAY }),
        },
      ]);
    });
    await click('Bring goods there');
    const out = form('Bring goods there');
    const pick = (name: string, choice: string) =>
      userEvent.selectOptions(within(out).getByRole('combobox', { name }), choice);
    await pick('Design', 'Fern shirt, Spring Fair shirts');
    // No other size lies at home.
    expect(within(out).queryByRole('combobox', { name: 'Size' })).toBeNull();
    await pick('Grade', 'Second');
    expect(within(out).getByText('3 lie at home.')).toBeInTheDocument();
    await userEvent.type(field(out, 'How many'), '3');
    await click('Note it');
    const [sent] = noted().stockTransfer;
    expect([sent?.body.from.grade, sent?.body.to.grade, sent?.body.quantity]).toEqual([
      'second',
      'second',
      3,
    ]);
    expect(shelf().sort()).toEqual(['home 0', 'home 2', 'shop 3']);
  });

  it('of the second grade are sold as such, at their own price', async () => {
    await shop();
    act(() => {
      const item = { kind: 'finished', jobId: 'fair-shirts', lineId: 'fern', size: 'M' } as const;
      const place = { kind: 'shop', name: 'Corner shop' } as const;
      const body = { item, place, grade: 'second', quantity: 2 } as const;
      actions().note('Counted', [{ kind: 'stockCount', body }]);
    });
    const statement = await state('1', '', '15');
    expect(within(statement).getByRole('group', { name: /, second grade$/ })).toBeInTheDocument();
    await click('Note the statement');
    expect(shelf()).toEqual(['shop 1']);
    expect(noted().stockMove.map(({ body }) => [body.grade, body.quantity])).toEqual([['second', -1]]);
    expect(screen.getByText(/15\.00 USD at its last prices/)).toBeInTheDocument();
  });

  it('keep the agreement beside them', async () => {
    await shop();
    const agreement = new File(['agreed'], 'agreement.txt', { type: 'text/plain' });
    await userEvent.upload(screen.getByLabelText('File to keep'), agreement);
    expect(await screen.findByText('agreement.txt')).toBeInTheDocument();
    expect(shopNow()?.attachments.map(({ fileName }) => fileName)).toEqual(['agreement.txt']);
    await click(/Remove agreement\.txt/);
    expect(shopNow()?.attachments).toEqual([]);
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
    expect(screen.getByRole('alert')).toHaveTextContent(/A shop here is or was called “Harbour shop”/);
    await rename('Mill shop');
    expect(shopNow()?.name).toBe('Mill shop');
    expect(screen.getByText('6 pieces')).toBeInTheDocument();
    expect(shelf().sort()).toEqual(['home 0', 'shop 0', 'shop 6']);
    // Another device, which has not heard of the name yet, brings three more; then all come home from both.
    act(() => {
      const item = { kind: 'finished', jobId: 'fair-shirts', lineId: 'fern', size: 'M' } as const;
      const home = { item, place: { kind: 'home' }, grade: 'first' } as const;
      const to = { ...home, place: { kind: 'shop', name: 'Corner shop' } } as const;
      actions().note('Out', [{ kind: 'stockTransfer', body: { from: home, to, quantity: 3 } }]);
    });
    expect(screen.getByText('9 pieces')).toBeInTheDocument();
    await click('Bring goods home');
    await click('Note it');
    expect(shelf().sort()).toEqual(['home 6', 'shop 0', 'shop 0']);
  });
});

describe('what was agreed', () => {
  it('says who bears losses until that is agreed, and no longer', async () => {
    await shop();
    const bears = screen.getByRole('combobox', { name: 'What is missing is borne by' });
    expect(bears).toHaveAccessibleDescription('Until it is agreed you bear it.');
    await userEvent.selectOptions(bears, 'The shop');
    expect(bears).toHaveAccessibleDescription('');
  });
});

describe('the shops', () => {
  it('are told in sentences, what lies there and what is due', async () => {
    await enter(<ShopsScreen />);
    act(() => {
      const body = shopSchema.parse({ name: 'Corner shop' });
      actions().edit('Shop', [{ do: 'add', kind: 'shop', id: 'corner', body }]);
    });
    expect(screen.getByText('Nothing lies there. No statement yet.')).toBeInTheDocument();
  });

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
