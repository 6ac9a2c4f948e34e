// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { WorkshopScreen } from '@/app/_workshop/WorkshopScreen';
import { workshopFields } from '@/app/_workshop/workshopFields';
import { workshopSections } from '@/app/_workshop/workshopSections';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import { bodyOf, clearScreens, enter, screenStore, undo } from './screens';

vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

// Whole screens are slow to search through in jsdom, and slower still beside other tests.
afterEach(() => {
  cleanup();
  clearScreens();
});

/** One part of the workshop on its own: the whole of it is long to search through. */
const part = (id: string) =>
  enter(
    <WithWorkspace>
      {(workspace) => (
        <>
          <h1>One part</h1>
          {workshopSections.find((section) => section.id === id)?.body(workshopFields(workspace))}
        </>
      )}
    </WithWorkspace>,
  );

const workshop = () => bodyOf('workshop', 'workshop');

async function retype(name: string | RegExp, text: string) {
  await userEvent.tripleClick(screen.getByRole('textbox', { name }));
  await userEvent.paste(text);
}

describe('the rates of the workshop', () => {
  it('stand under their groups with their marks, and say what they change', async () => {
    await enter(<WorkshopScreen />);
    const ink = screen.getByRole('region', { name: 'Ink' });
    expect(within(ink).getByRole('textbox', { name: 'Ink lost while printing' })).toHaveValue('10');
    expect(within(ink).getAllByText('typical')).toHaveLength(3);
    expect(within(ink).getByText('Spitting and overspray on top of what lands in the print.')).toBeVisible();
    expect(screen.getByText('measured 212×')).toBeVisible();
  });

  it('become yours with today’s day when typed, as one step that undo names', async () => {
    await part('ink');
    await retype('Ink lost while printing', '12.5');
    expect(workshop().rates.inkLoss).toEqual({
      value: 0.125,
      unit: 'share',
      date: TEST_DAY,
      origin: 'yours',
    });
    expect(screenStore().getState().undoLabel).toBe('Ink lost while printing');
    await undo();
    expect(workshop().rates.inkLoss?.value).toBe(0.1);
  });

  it('are missing and not 0 when emptied, and say what that means', async () => {
    await part('pay');
    const wage = screen.getByRole('textbox', { name: 'Your pay' });
    await userEvent.clear(wage);
    expect(workshop().rates.wage).toBeNull();
    expect(wage).toHaveAccessibleDescription(/Missing\. No job can be priced without it/);
    await userEvent.click(screen.getByRole('button', { name: /Take the typical 18\.00 .* for Your pay/ }));
    expect(workshop().rates.wage).toMatchObject({ value: 18, origin: 'typical' });
  });

  it('can be typed in either unit, and keep their meaning', async () => {
    await part('packing');
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'Unit of Driving' }),
      'USD a kilometre',
    );
    expect(workshop().rates.travelRate).toMatchObject({ unit: 'money/km', origin: 'yours' });
    expect(workshop().rates.travelRate?.value).toBeCloseTo(0.6 / 1.609344, 12);
  });
});

describe('machines', () => {
  it('that a job stands on ask before they go, and come back', async () => {
    await part('presses');
    await userEvent.click(screen.getByRole('button', { name: /^Flat press 15/ }));
    await userEvent.click(screen.getByRole('button', { name: /^Remove Flat press/ }));
    expect(screen.getByRole('alert')).toHaveTextContent('Ramblers Club shirts and 1 more job use Flat press');
    expect(workshop().presses).toHaveLength(2);
    await userEvent.click(screen.getByRole('button', { name: 'Remove it all the same' }));
    expect(workshop().presses.map(({ id }) => id)).toEqual(['mug-press']);
    await userEvent.click(screen.getByRole('button', { name: 'Bring it back' }));
    await eventually(() => expect(workshop().presses).toHaveLength(2));
  });

  it('are added from a set with typical figures, under a name of their own', async () => {
    await part('sheets');
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'A further sheet' }),
      'Letter, 8.5 × 11 in',
    );
    await userEvent.click(screen.getByRole('button', { name: 'Add it' }));
    const [, added] = workshop().sheets;
    expect(added).toMatchObject({ name: 'Letter sheet 2', price: { origin: 'typical' } });
    expect(added?.widthMm).toBeCloseTo(215.9, 9);
    expect(screen.getByRole('textbox', { name: 'Name' })).toHaveValue('Letter sheet 2');
  });

  it('keep a length as it is typed in inches', async () => {
    await part('sheets');
    await userEvent.click(screen.getByRole('button', { name: /^Letter sheet/ }));
    await retype('Width', '8.27');
    expect(workshop().sheets[0]?.widthMm).toBeCloseTo(8.27 * 25.4, 10);
    await userEvent.tab();
    expect(screen.getByRole('textbox', { name: 'Width' })).toHaveValue('8.27');
  });
});

describe('what is asked of printers and papers', () => {
  it('is how much grey is printed with black, light inks, the longest page and the profile', async () => {
    await part('printers');
    await userEvent.click(screen.getByRole('button', { name: /^Desk printer/ }));
    const share = screen.getByRole('textbox', { name: 'Share of the grey printed with black' });
    expect(share).toHaveValue('50');
    expect(share).toHaveAccessibleDescription(/0 where it has no black ink/);
    await retype('Share of the grey printed with black', '0');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: /^It has light inks/ }), 'Yes');
    expect(screen.getByText(/They are not counted apart/)).toBeVisible();
    await retype('Longest page it takes', '47');
    await retype('Colour profile to choose', 'Sublimation, white cloth');
    const [printer] = workshop().printers;
    expect(printer).toMatchObject({
      blackShare: { value: 0, origin: 'yours', date: TEST_DAY },
      lightInks: true,
      colourProfile: 'Sublimation, white cloth',
    });
    expect(printer?.longestPageMm).toBeCloseTo(47 * 25.4, 9);
    await userEvent.clear(screen.getByRole('textbox', { name: 'Colour profile to choose' }));
    expect(workshop().printers[0]?.colourProfile).toBeNull();
  });

  it('is the setting of a paper, none where it is emptied', async () => {
    await part('sheets');
    await userEvent.click(screen.getByRole('button', { name: /^Letter sheet/ }));
    await retype('Paper setting to choose', 'Plain paper, high quality');
    expect(workshop().sheets[0]?.mediaSetting).toBe('Plain paper, high quality');
    await userEvent.clear(screen.getByRole('textbox', { name: 'Paper setting to choose' }));
    expect(workshop().sheets[0]?.mediaSetting).toBeNull();
  });
});

describe('the rest of the workshop', () => {
  it('asks of tax plainly, sends to the local authority, and hides the rate where none is charged', async () => {
    await part('selling');
    expect(screen.getByText(/Ask your local authority before you sell/)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: /^Market stall/ }));
    expect(screen.getByRole('textbox', { name: 'Tax rate' })).toHaveValue('7');
    const question = screen.getByRole('combobox', { name: 'Is tax inside the prices you write here?' });
    await userEvent.selectOptions(question, 'I charge no tax');
    expect(workshop().channels[1]?.taxMode).toBe('none');
    expect(screen.queryByRole('textbox', { name: 'Tax rate' })).not.toBeInTheDocument();
  });

  it('takes a step for up-charges, none where it is emptied, and how tax is rounded', async () => {
    await part('prices');
    await retype('Up-charges in steps of', '0.25');
    expect(workshop().policy.upChargeStep).toBe(0.25);
    await userEvent.clear(screen.getByRole('textbox', { name: 'Up-charges in steps of' }));
    expect(workshop().policy.upChargeStep).toBeNull();
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'Tax is rounded' }),
      'on each line of a paper',
    );
    expect(workshop().policy.taxRounding).toBe('line');
    expect(screen.getByText('Ask your local authority which holds.')).toBeVisible();
  });

  it('refuses a break out of order and keeps what was typed', async () => {
    await part('prices');
    // The sums choose until the maker says otherwise.
    expect(workshop().policy.breaks).toBeNull();
    await userEvent.selectOptions(screen.getByLabelText('Quantity breaks'), 'my own');
    await retype('Break 3, from', '30');
    expect(screen.getByRole('textbox', { name: 'Break 3, from' })).toHaveValue('30');
    expect(workshop().policy.breaks).toEqual([1, 6, 12, 24, 48]);
    await retype('Break 3, from', '10');
    expect(workshop().policy.breaks).toEqual([1, 6, 10, 24, 48]);
  });

  it('leaves circuit and hours unsaid, and begins them on one press', async () => {
    await part('hours');
    await userEvent.click(
      await screen.findByRole('button', { name: 'Leave them unsaid' }, { timeout: 20_000 }),
    );
    expect(workshop().blocks).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: /^Begin with an hour/ }));
    expect(workshop().blocks).toEqual(usualBlocks);
  });

  it('goes to the field the address names, and opens what holds it', async () => {
    window.location.hash = '#workshop-presses-1-warmUpMinutes';
    HTMLElement.prototype.scrollIntoView = () => undefined;
    await enter(<WorkshopScreen />);
    await eventually(() => expect(screen.getByRole('textbox', { name: 'Minutes to warm up' })).toHaveFocus());
  });
});
