// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { StartScreen } from '@/app/_start/StartScreen';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { bodyOf, clearScreens, enter, idsOf, screenStore, undo } from './screens';

const push = vi.hoisted(() => vi.fn<(href: string) => void>());
vi.mock('next/navigation', () => ({ useRouter: () => ({ push }) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});
vi.mock('@/app/_pricing/priceService', async () => {
  const { benchPrices: prices } = await import('@/tests/app/_docket/bench');
  return { startPriceService: prices.start };
});

beforeEach(() => push.mockClear());
afterEach(() => {
  cleanup();
  clearScreens();
});

const group = (name: string) => within(screen.getByRole('group', { name }));
const pick = (question: string, answer: string | RegExp) =>
  userEvent.click(group(question).getByRole('radio', { name: answer }));
const price = () => within(screen.getByRole('region', { name: 'Price' }));
const priced = () => price().findByText('would pay you', { exact: false });
const open = () => userEvent.click(screen.getByRole('button', { name: 'Open the job' }));

async function make(thing: string) {
  await enter(<StartScreen />);
  await pick('What do you make?', thing);
  await priced();
}

describe('the start of a first job', () => {
  it('says that a price comes as soon as it is said what is made, and opens nothing before', async () => {
    await enter(<StartScreen />);
    expect(price().getByText('The price stands here as soon as you say what you make.')).toBeVisible();
    await open();
    expect(push).not.toHaveBeenCalled();
    expect(idsOf('job')).not.toContain('first-job');
  });

  it('shows after one tap what a shirt costs, what that pays, and that all of it is typical', async () => {
    await make('Shirts');
    // Typical figures: a shirt of 4.60, 18 an hour, 12 pieces, 30 % of margin. Up-charges begin at 2XL.
    expect(price().getByText('a shirt, S to XL')).toBeVisible();
    expect(price().getByText(/USD for 12; tax not decided yet/)).toBeVisible();
    expect(price().getByText(/all \d+ figures are typical/)).toBeVisible();
  });

  it('begins with twelve in a typical mix, which can be typed over', async () => {
    await make('Shirts');
    const pieces = group('Pieces').getAllByRole('textbox');
    expect(pieces.map((one) => (one as HTMLInputElement).value)).toEqual(['1', '3', '4', '2', '1', '1']);
    await userEvent.clear(group('Pieces').getByRole('textbox', { name: 'M' }));
    await userEvent.type(group('Pieces').getByRole('textbox', { name: 'M' }), '9');
    expect(await price().findByText(/USD for 18/)).toBeVisible();
    expect(screen.getByText('18 pieces')).toBeVisible();
  });

  it('offers mugs the presses that take them, and keeps their pieces in one size', async () => {
    await make('Mugs');
    const presses = group('Which press?').getAllByRole('radio');
    expect(presses.map((one) => one.parentElement?.textContent)).toEqual([
      'Mug press11 to 15 oz',
      'Tumbler presswraps all round',
      'Ovenwith shrink wrap',
    ]);
    expect(group('Pieces').getByRole('textbox', { name: '11 oz' })).toHaveValue('12');
    expect(screen.queryByText(/fibre label/)).not.toBeInTheDocument();
  });

  it('keeps the job beside the example as one step, and undo takes it back', async () => {
    await make('Mugs');
    await open();
    expect(push).toHaveBeenLastCalledWith('/jobs/first-job');
    expect(idsOf('job')).toEqual(
      expect.arrayContaining(['first-job', 'club-order', 'fair-mugs', 'fair-shirts']),
    );
    expect(bodyOf('job', 'first-job').lines[0]).toMatchObject({
      name: 'White coated mug, 11 oz',
      quantities: [{ size: '11 oz', quantity: 12 }],
      placements: [{ position: 'wrap', pressId: 'press-1' }],
    });
    expect(bodyOf('workshop', 'workshop').presses[0]).toMatchObject({ id: 'press-1', kind: 'mug' });
    expect(screenStore().getState().undoLabel).toBe('Start of your own workshop');
    await undo();
    expect(idsOf('job')).toEqual(['club-order', 'fair-mugs', 'fair-shirts']);
    expect(bodyOf('workshop', 'workshop').name).toBe('Exampleton Prints');
  });

  it('finds after a reload what was chosen', async () => {
    await make('Bags');
    await pick('Which paper does your printer take?', /^A4/);
    await pick('Is the room aired while you press?', 'Yes');
    cleanup();
    await enter(<StartScreen />);
    await priced();
    expect(group('What do you make?').getByRole('radio', { name: 'Bags' })).toBeChecked();
    expect(group('Which paper does your printer take?').getByRole('radio', { name: /^A4/ })).toBeChecked();
    expect(group('Is the room aired while you press?').getByRole('radio', { name: 'Yes' })).toBeChecked();
  });

  it('begins anew where what the tab remembers cannot be read', async () => {
    sessionStorage.setItem('pressminute-start', '{"make":"rockets"}');
    await enter(<StartScreen />);
    expect(price().getByText('The price stands here as soon as you say what you make.')).toBeVisible();
  });

  it('takes the price away with a stop and says why, as when the sewn label is taken out', async () => {
    await make('Shirts');
    await pick('Does the sewn-in fibre label stay on?', 'No');
    expect(await price().findByText('no price')).toBeVisible();
    expect(price().getByRole('listitem')).toHaveTextContent(/label/i);
  });

  it('asks for the width of a roll and for the platen of another press, and says what is no length', async () => {
    await make('Shirts');
    await pick('Which paper does your printer take?', /^A roll/);
    const width = screen.getByRole('textbox', { name: 'Width of the roll' });
    expect(width).toHaveValue('24');
    await userEvent.clear(width);
    await userEvent.type(width, 'wide');
    expect(width).toHaveAttribute('aria-invalid', 'true');
    await pick('Which press?', /^Another one/);
    expect(screen.getByRole('textbox', { name: 'Width of the platen' })).toHaveValue('9');
  });
});

describe('the figures of a start', () => {
  it('are a dozen in order, each typical until typed', async () => {
    await make('Shirts');
    await userEvent.click(screen.getByRole('button', { name: 'The dozen figures that matter most' }));
    const labels = [
      'Your pay',
      'Running the workshop for a year',
      'Hours worked on jobs in a year',
      'A plain shirt',
      'Ink',
      'Enquiry, quote and messages',
      'Setting up for a session',
      'Feeding, watching and trimming a sheet',
      'Minutes of hands for a press',
      'Electricity',
      'A sheet of transfer paper',
      'Margin you aim for, after your own pay',
    ];
    for (const name of labels) expect(screen.getByRole('textbox', { name })).toBeVisible();
    await userEvent.clear(screen.getByRole('textbox', { name: 'Your pay' }));
    await userEvent.type(screen.getByRole('textbox', { name: 'Your pay' }), '22');
    await open();
    expect(bodyOf('workshop', 'workshop').rates.wage).toEqual({
      value: 22,
      unit: 'money/h',
      date: TEST_DAY,
      origin: 'yours',
    });
  });

  it('change the price at once, and one fewer is typical', async () => {
    await make('Shirts');
    const before = Number(
      /all (\d+) figures/.exec(price().getByText(/figures are typical/).textContent ?? '')?.[1],
    );
    await userEvent.click(screen.getByRole('button', { name: 'The dozen figures that matter most' }));
    await userEvent.clear(screen.getByRole('textbox', { name: 'Setting up for a session' }));
    await userEvent.type(screen.getByRole('textbox', { name: 'Setting up for a session' }), '90');
    expect(await price().findByText(`${before - 1} of ${before} figures are typical`)).toBeVisible();
  });

  it('are in the money and the paper chosen, and the example follows', async () => {
    await make('Shirts');
    await userEvent.click(screen.getByRole('button', { name: /^Money and units/ }));
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Your money' }), 'EUR');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Units at your bench' }), 'metric');
    expect(await price().findByText(/EUR for 12/)).toBeVisible();
    await open();
    const { currency, units } = bodyOf('workshop', 'workshop');
    expect([currency, units.length]).toEqual(['EUR', 'mm']);
    expect(bodyOf('blank', 'white-mug').name).toBe('White coated mug, 330 mL');
  });

  it('ask what a dollar is where amounts are far from it', async () => {
    await make('Shirts');
    await userEvent.click(screen.getByRole('button', { name: /^Money and units/ }));
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Your money' }), 'SEK');
    expect(screen.getByRole('textbox', { name: 'A dollar or a euro is about' })).toHaveValue('10');
    expect(await price().findByText(/SEK for 12/)).toBeVisible();
  });
});

describe('a second start', () => {
  it('makes another job in the workshop that is there, and asks for no rates', async () => {
    await make('Shirts');
    await open();
    cleanup();
    await enter(<StartScreen />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Another job');
    expect(screen.queryByText('Your figures')).not.toBeInTheDocument();
    await pick('What do you make?', 'Mugs');
    await priced();
    await open();
    expect(idsOf('job')).toHaveLength(5);
    expect(bodyOf('workshop', 'workshop').presses.map(({ id }) => id)).toContain('mug-press');
  });
});
