// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './shopStage';
import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { fixPlan } from '@/tests/app/_count/inCount';
import { bring, click, field, form, noted, shop, state } from '@/tests/app/_shops/shopHands';

const AGREED = 'Its price, agreed';
const agreed = () => noted().shopPrice.map(({ body }) => [body.goods.size, body.eachMinor]);

/** Fills the form in and leaves it open, for home was not counted. */
async function begin(): Promise<HTMLElement> {
  await bring('6', null);
  return form('Bring goods there');
}

describe('the price agreed with a shop', () => {
  it('begins with that of the stall, is kept with the goods and begins the statement', async () => {
    await fixPlan();
    await shop();
    const out = await begin();
    expect(field(out, AGREED)).toHaveValue('28.00');
    expect(field(out, AGREED)).toHaveAccessibleDescription(/As planned for Exampleton Spring Fair\./);
    // Another size begins with its own.
    await userEvent.selectOptions(within(out).getByRole('combobox', { name: 'Size' }), '2XL');
    expect(field(out, AGREED)).toHaveValue('31.00');
    await userEvent.clear(field(out, AGREED));
    await userEvent.type(field(out, AGREED), '34');
    await userEvent.type(field(out, 'Counted at home before'), '6');
    await click('Note it');
    expect(agreed()).toEqual([['2XL', 3400]]);
    expect(screen.getByText(/34\.00 USD each/)).toBeInTheDocument();
    // Six at 34.00.
    expect(screen.getByText(/204\.00 USD at its last prices/)).toBeInTheDocument();
    expect(field(await state('', '', null), 'Its price')).toHaveValue('34.00');
  });

  it('is begun with again once all of it was sold', async () => {
    await fixPlan();
    await shop();
    const out = await begin();
    await userEvent.clear(field(out, AGREED));
    await userEvent.type(field(out, AGREED), '32');
    await userEvent.type(field(out, 'Counted at home before'), '9');
    await click('Note it');
    await state('6', '', null);
    await click('Note the statement');
    expect(screen.getByText(/lies there/)).toHaveTextContent('Nothing lies there');
    // The stall asks 28.00 for it.
    await bring('3', null);
    expect(agreed()).toEqual([
      ['M', 3200],
      ['M', 3200],
    ]);
    // Three at 32.00.
    expect(screen.getByText(/96\.00 USD at its last prices/)).toBeInTheDocument();
  });

  it('may be open still, and then none is noted and the shelf says so', async () => {
    await shop();
    const out = await begin();
    expect(field(out, AGREED)).toHaveValue('');
    expect(field(out, AGREED)).toHaveAccessibleDescription(/Left empty it is not agreed yet/);
    await userEvent.type(field(out, 'Counted at home before'), '6');
    await click('Note it');
    expect(agreed()).toEqual([]);
    expect(screen.getByText(/no price agreed/)).toBeInTheDocument();
  });
});
