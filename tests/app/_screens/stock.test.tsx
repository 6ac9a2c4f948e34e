// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { BlanksScreen } from '@/app/_blanks/BlanksScreen';
import { foldStock } from '@/lib/stock/foldStock';
import { onHand } from '@/lib/stock/onHand';
import { eventually } from '@/tests/tools/eventually';
import { clearScreens, enter, screenStore, undo } from './screens';

vi.mock('next/navigation', () => ({ useSearchParams: () => new URLSearchParams('id=white-mug') }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

afterEach(() => {
  cleanup();
  clearScreens();
});

const entries = () => screenStore().getState().entries;
const piles = () => {
  const { stockMove, stockTransfer, stockCount } = entries();
  return foldStock([...stockMove, ...stockTransfer, ...stockCount]);
};
const mugs = () => onHand(piles())['white-mug']?.['11 oz'];

/** Opens the form of the one size of the mug, chooses what happened and types how many. */
async function type(many: string, act?: string) {
  await userEvent.click(screen.getByRole('button', { name: 'Count or note 11 oz' }));
  const form = within(screen.getByRole('form', { name: 'Note for 11 oz' }));
  if (act !== undefined) await userEvent.selectOptions(form.getByLabelText('What happened'), act);
  await userEvent.type(form.getByLabelText('How many'), many);
  return form;
}

async function note(many: string, act?: string) {
  await type(many, act);
  await userEvent.keyboard('{Enter}');
}

describe('what is on hand of a blank', () => {
  it('is not counted at first, and then what was counted; the focus goes to what it says', async () => {
    await enter(<BlanksScreen />);
    expect(screen.getByText('not counted')).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Count or note 11 oz' }));
    expect(screen.getByLabelText('How many')).toHaveFocus();
    await userEvent.keyboard('12{Enter}');
    expect(mugs()).toBe(12);
    expect(document.activeElement).toHaveTextContent('12 at home');
    expect(screen.queryByRole('form', { name: 'Note for 11 oz' })).toBeNull();
    expect(screen.getByRole('button', { name: /^White coated mug.* 12 at home$/ })).toBeVisible();
  });

  it('follows what comes and goes, at home and elsewhere', async () => {
    await enter(<BlanksScreen />);
    await note('12');
    await note('24', 'Bought');
    await note('5', 'Given away');
    await note('10', 'Moved');
    expect(mugs()).toBe(21);
    expect(screen.getByText('21 at home · 10 in the van')).toBeVisible();
    expect(
      screen.getByRole('button', { name: /^White coated mug.* 21 at home · 10 in the van$/ }),
    ).toBeVisible();
  });

  it('tells what a count finds otherwise before it is noted, and after', async () => {
    await enter(<BlanksScreen />);
    await note('12');
    const form = await type('9');
    expect(form.getByText('12 noted there: 3 fewer than noted, a loss nobody saw.')).toBeVisible();
    expect(mugs()).toBe(12);
    await userEvent.keyboard('{Enter}');
    expect(mugs()).toBe(9);
    expect(screen.getByText(/^Counted .*: 3 fewer than noted, a loss nobody saw\.$/)).toBeVisible();
  });

  it('says when more goes out than was ever in, and does not hide it', async () => {
    await enter(<BlanksScreen />);
    await note('2');
    const form = await type('5', 'Used');
    expect(form.getByText(/^Only 2 noted there: it goes below zero/)).toBeVisible();
    await userEvent.keyboard('{Enter}');
    expect(mugs()).toBe(-3);
    expect(screen.getByText('Count it: 3 more went out at home than came in.')).toBeVisible();
    expect(screen.queryByText(/−3/)).not.toBeInTheDocument();
    expect(screen.getByRole('button', { name: /1 size to count/ })).toBeVisible();
  });

  it('keeps place, grade, lot and price where they are told', async () => {
    await enter(<BlanksScreen />);
    const form = await type('24', 'Bought');
    await userEvent.click(form.getByText('Place, grade, lot'));
    await userEvent.selectOptions(form.getByLabelText('Place'), 'Another shop');
    await userEvent.type(form.getByLabelText('Name of the shop'), 'Corner shop');
    await userEvent.selectOptions(form.getByLabelText('Grade'), 'Second');
    await userEvent.type(form.getByLabelText('Lot'), 'A7');
    await userEvent.type(form.getByLabelText(/^One cost/), '2.1');
    await userEvent.click(form.getByRole('button', { name: 'Note it' }));
    expect(entries().stockMove.map(({ body }) => body)).toEqual([
      {
        item: { kind: 'blank', blankId: 'white-mug', size: '11 oz', lot: 'A7' },
        place: { kind: 'shop', name: 'Corner shop' },
        grade: 'second',
        quantity: 24,
        cause: 'bought',
        reference: null,
        unitCost: { minor: 210, currency: 'USD' },
      },
    ]);
    expect(mugs()).toBeUndefined();
    expect(screen.getByText('not counted · 24 of second grade at Corner shop')).toBeVisible();
    expect(screen.getByText('Bought 24, at Corner shop, second grade, lot A7, 2.10 USD each')).toBeVisible();
  });

  it('notes nothing while the number or the name of the shop is missing', async () => {
    await enter(<BlanksScreen />);
    await userEvent.click(screen.getByRole('button', { name: 'Count or note 11 oz' }));
    const form = within(screen.getByRole('form', { name: 'Note for 11 oz' }));
    await userEvent.click(form.getByRole('button', { name: 'Note it' }));
    expect(form.getByLabelText('How many')).toHaveFocus();
    expect(form.getByLabelText('How many')).toHaveAccessibleDescription(/How many comes first/);
    await userEvent.type(form.getByLabelText('How many'), '3');
    await userEvent.click(form.getByText('Place, grade, lot'));
    await userEvent.selectOptions(form.getByLabelText('Place'), 'Another shop');
    expect(form.getByRole('button', { name: 'Note it' })).toHaveAttribute('aria-disabled', 'true');
    await userEvent.click(form.getByRole('button', { name: 'Note it' }));
    expect(entries().stockCount).toEqual([]);
  });
});

describe('what was noted of a blank', () => {
  it('is told newest first, and can be taken back, which leaves what was before', async () => {
    await enter(<BlanksScreen />);
    await note('12');
    await note('5', 'Used');
    const rows = screen
      .getAllByRole('listitem')
      .flatMap(({ textContent }) => /11 oz (Used|Counted) \d+/.exec(textContent ?? '')?.[0] ?? []);
    expect(rows).toEqual(['11 oz Used 5', '11 oz Counted 12']);
    await userEvent.click(screen.getByRole('button', { name: 'Take back 11 oz: Used 5' }));
    expect(mugs()).toBe(12);
    expect(screen.getByText('“11 oz: Used 5” is taken back.')).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Count it again' }));
    expect(mugs()).toBe(7);
  });

  it('is one step of undo, which says what it was', async () => {
    await enter(<BlanksScreen />);
    await note('12');
    expect(screenStore().getState().undoLabel).toBe('11 oz: Counted 12');
    await undo();
    expect(mugs()).toBeUndefined();
    expect(screen.getByText('not counted')).toBeVisible();
  });
});

it('a size that is renamed keeps what lies there, and undo brings both back', async () => {
  await enter(<BlanksScreen />);
  await note('12');
  await userEvent.click(screen.getByRole('button', { name: /^11 oz / }));
  const name = screen.getByDisplayValue('11 oz');
  await userEvent.clear(name);
  await userEvent.type(name, 'Large');
  await userEvent.click(screen.getByRole('button', { name: 'Rename, in all jobs too' }));
  expect(onHand(piles())['white-mug']).toEqual({ '11 oz': 0, Large: 12 });
  expect(screen.getByRole('button', { name: 'Count or note Large' })).toBeVisible();
  expect(screen.queryByRole('button', { name: 'Count or note 11 oz' })).toBeNull();
  await undo();
  expect(mugs()).toBe(12);
});

it('a size that is taken out while something lies there is told, so that it can be noted away', async () => {
  await enter(<BlanksScreen />);
  const item = { kind: 'blank', blankId: 'white-mug', size: '15 oz', lot: null } as const;
  const { note: noteIn } = screenStore().actions;
  await eventually(() =>
    expect(
      noteIn('Count', [
        { kind: 'stockCount', body: { item, place: { kind: 'home' }, grade: 'first', quantity: 4 } },
      ]).state,
    ).toBe('shown'),
  );
  expect(await screen.findByText(/^15 oz: noted, but no size of this blank any more/)).toBeVisible();
});
