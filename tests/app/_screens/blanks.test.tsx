// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { BlanksScreen } from '@/app/_blanks/BlanksScreen';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import { bodyOf, clearScreens, enter, idsOf, undo } from './screens';

const address = vi.hoisted(() => ({ search: '' }));
vi.mock('next/navigation', () => ({ useSearchParams: () => new URLSearchParams(address.search) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

// Whole screens are slow to search through in jsdom, and slower still beside other tests.
afterEach(() => {
  cleanup();
  clearScreens();
  address.search = '';
});

const shirt = () => bodyOf('blank', 'white-shirt');

async function openShirt() {
  address.search = 'id=white-shirt';
  await enter(<BlanksScreen />);
}

describe('BlanksScreen', () => {
  it('opens the blank a job leads to, and takes the focus there', async () => {
    await openShirt();
    expect(
      screen.getByRole('button', { name: /^White shirt, 100 % polyester White · 100 % polyester/ }),
    ).toHaveFocus();
    expect(screen.getByRole('textbox', { name: '2XL' })).toHaveValue('6.10');
  });

  it('keeps a typed price as yours, of today', async () => {
    await openShirt();
    await userEvent.tripleClick(screen.getByRole('textbox', { name: 'M' }));
    await userEvent.paste('5.25');
    expect(shirt().sizes[1]?.price).toEqual({
      value: 5.25,
      unit: 'money/piece',
      date: TEST_DAY,
      origin: 'yours',
    });
  });

  it('takes a named swatch with its L*a*b*, and one’s own reading', async () => {
    await openShirt();
    await userEvent.click(screen.getByRole('radio', { name: 'Ash' }));
    expect(shirt().colour).toEqual({ name: 'Ash', L: 84, a: 0, b: 0 });
    await userEvent.tripleClick(screen.getByRole('textbox', { name: 'L*, lightness' }));
    await userEvent.paste('83.5');
    expect(shirt().colour.L).toBe(83.5);
    expect(screen.getByRole('radio', { name: 'Ash' })).not.toBeChecked();
  });

  it('warns of goods for children and sends to the local authority', async () => {
    await openShirt();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Meant for children?' }), 'Yes');
    expect(screen.getByText(/Children’s goods can need test evidence/)).toHaveTextContent(
      'Ask your local authority',
    );
  });

  it('shows the largest safe temperature in the maker’s scale', async () => {
    await openShirt();
    await userEvent.type(screen.getByRole('textbox', { name: 'Largest safe temperature' }), '400');
    expect(shirt().maxTemperatureC).toBeCloseTo(204.444, 3);
    await userEvent.tab();
    expect(screen.getByRole('textbox', { name: 'Largest safe temperature' })).toHaveValue('400');
  });

  it('gives a size a new name in every job at once, as one step', async () => {
    await openShirt();
    await userEvent.click(screen.getByRole('button', { name: /^2XL/ }));
    const size = screen.getByRole('button', { name: /^2XL/ }).closest('div');
    const name = within(size ?? document.body).getByRole('textbox', { name: 'Name' });
    await userEvent.clear(name);
    await userEvent.type(name, 'XXL');
    await userEvent.click(screen.getByRole('button', { name: 'Rename, in all jobs too' }));
    expect(shirt().sizes.map((each) => each.name)).toContain('XXL');
    const [line] = bodyOf('job', 'club-order').lines;
    expect(line?.quantities.map((entry) => entry.size)).toContain('XXL');
    expect(line?.upCharges.map((entry) => entry.size)).toContain('XXL');
    await undo();
    expect(shirt().sizes.map((each) => each.name)).toContain('2XL');
    expect(bodyOf('job', 'club-order').lines[0]?.quantities.map((entry) => entry.size)).toContain('2XL');
  });

  it('tells which jobs make a size before it goes', async () => {
    await openShirt();
    await userEvent.click(screen.getByRole('button', { name: /^3XL/ }));
    await userEvent.click(screen.getByRole('button', { name: 'Remove size 3XL' }));
    expect(screen.getByRole('alert')).toHaveTextContent('Ramblers Club shirts and 1 more job use size 3XL');
    await userEvent.click(screen.getByRole('button', { name: 'Leave it' }));
    expect(shirt().sizes).toHaveLength(6);
  });

  it('adds a blank of a starting set with typical figures, and opens it', async () => {
    await enter(<BlanksScreen />);
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'A further blank' }),
      'White coated mug, 11 oz',
    );
    await userEvent.click(screen.getByRole('button', { name: 'Add it' }));
    expect(idsOf('blank')).toHaveLength(3);
    expect(screen.getByRole('heading', { level: 2, name: /^White coated mug, 11 oz 2/ })).toBeVisible();
    expect(screen.getByRole('textbox', { name: 'Name' })).toHaveValue('White coated mug, 11 oz 2');
  });

  it('copies a blank, and asks before it removes one that jobs stand on', async () => {
    await openShirt();
    await userEvent.click(screen.getByRole('button', { name: 'Remove White shirt, 100 % polyester' }));
    expect(screen.getByRole('alert')).toHaveTextContent('Ramblers Club shirts and 1 more job use');
    await userEvent.click(screen.getByRole('button', { name: 'Remove it all the same' }));
    expect(idsOf('blank')).toEqual(['white-mug']);
    await userEvent.click(screen.getByRole('button', { name: 'Bring it back' }));
    await eventually(() => expect(idsOf('blank')).toContain('white-shirt'));
  });
});
