// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { today } from '@/app/_clock/useToday';
import { StartScreen } from '@/app/_start/StartScreen';
import { bodyOf, clearScreens, enter, idsOf, screenStore, undo } from './screens';

const push = vi.hoisted(() => vi.fn<(href: string) => void>());
vi.mock('next/navigation', () => ({ useRouter: () => ({ push }) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

beforeEach(() => {
  push.mockClear();
  vi.stubGlobal('matchMedia', () => ({ matches: true }));
});
afterEach(() => {
  cleanup();
  clearScreens();
  vi.unstubAllGlobals();
});

async function begin() {
  await enter(<StartScreen />);
  await userEvent.click(screen.getByRole('button', { name: 'Take the example away and start' }));
  await screen.findByRole('heading', { name: 'Your pay' });
}

describe('the start of one’s own workshop', () => {
  it('says what goes and what comes before anything is done', async () => {
    await enter(<StartScreen />);
    expect(screen.getByText(/The example with its jobs, blanks and rates is taken away/)).toHaveTextContent(
      'undo brings all of it back',
    );
    expect(idsOf('job')).toContain('club-order');
  });

  it('takes the example away as one step, and undo brings all of it back', async () => {
    await begin();
    expect(idsOf('job')).toEqual(['first-job']);
    expect(idsOf('blank')).toEqual(['first-shirt']);
    expect(screenStore().getState().undoLabel).toBe('Start of your own workshop');
    await undo();
    expect(idsOf('job')).toEqual(['club-order', 'fair-mugs', 'fair-shirts']);
    expect(screen.getByRole('button', { name: 'Take the example away and start' })).toBeVisible();
  });

  it('begins in the money and units chosen', async () => {
    await enter(<StartScreen />);
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Your money' }), 'EUR');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Units at your bench' }), 'metric');
    await userEvent.click(screen.getByRole('button', { name: 'Take the example away and start' }));
    await screen.findByRole('heading', { name: 'Your pay' });
    const { currency, units, sheets } = bodyOf('workshop', 'workshop');
    expect({ currency, length: units.length, sheet: sheets[0]?.name }).toEqual({
      currency: 'EUR',
      length: 'mm',
      sheet: 'A4 sheet',
    });
  });

  it('warns of jobs of one’s own, and offers a copy of them first', async () => {
    await begin();
    cleanup();
    sessionStorage.clear();
    await enter(<StartScreen />);
    expect(screen.getByText(/One job here is your own: My first job/)).toBeVisible();
    expect(screen.getByRole('button', { name: 'Save everything as a file' })).toBeVisible();
  });
});

describe('the walk through a new workshop', () => {
  it('asks a dozen figures in order, each typical until touched, and ends in the first job', async () => {
    await begin();
    const asked: (string | null)[] = [];
    for (let step = 1; step <= 12; step += 1) {
      expect(screen.getByText(/Your own workshop,/)).toHaveTextContent(`${step} of 12`);
      asked.push(screen.getByRole('heading', { level: 1 }).textContent);
      await userEvent.click(screen.getByRole('button', { name: /^Leave it typical/ }));
    }
    expect(asked).toEqual([
      'Your pay',
      'Running the workshop for a year',
      'Hours worked on jobs in a year',
      'A plain shirt, sizes S to XL',
      'Ink',
      'Enquiry, quote and messages',
      'Setting up for a session',
      'Feeding, watching and trimming a sheet',
      'Minutes of hands for a press',
      'Electricity',
      'Price of a sheet of transfer paper',
      'Margin you aim for, after your own pay',
    ]);
    expect(push).toHaveBeenLastCalledWith('/jobs/first-job');
    expect(bodyOf('workshop', 'workshop').rates.wage?.origin).toBe('typical');
  });

  it('keeps what is typed as yours, goes on by Enter, and comes back to the same place after a reload', async () => {
    await begin();
    expect(screen.getByRole('textbox', { name: 'Your pay' })).toHaveFocus();
    await userEvent.tripleClick(screen.getByRole('textbox', { name: 'Your pay' }));
    await userEvent.keyboard('22{Enter}');
    expect(bodyOf('workshop', 'workshop').rates.wage).toEqual({
      value: 22,
      unit: 'money/h',
      date: today(),
      origin: 'yours',
    });
    cleanup();
    await enter(<StartScreen />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Running the workshop for a year');
    await userEvent.click(screen.getByRole('button', { name: 'Back' }));
    expect(screen.getByRole('textbox', { name: 'Your pay' })).toHaveValue('22.00');
  });

  it('stays at a figure that is no number, because going on would lose it', async () => {
    await begin();
    await userEvent.tripleClick(screen.getByRole('textbox', { name: 'Your pay' }));
    await userEvent.keyboard('about 20{Enter}');
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Your pay');
    expect(screen.getByRole('textbox', { name: 'Your pay' })).toHaveValue('about 20');
  });

  it('sets the price of all sizes that cost alike, and leaves the larger ones', async () => {
    await begin();
    for (let step = 1; step < 4; step += 1) {
      await userEvent.click(screen.getByRole('button', { name: /^Leave it typical/ }));
    }
    await userEvent.tripleClick(screen.getByRole('textbox', { name: 'A plain shirt, sizes S to XL' }));
    await userEvent.paste('3.9');
    const prices = bodyOf('blank', 'first-shirt').sizes.map(
      ({ price }) => `${price?.value} ${price?.origin}`,
    );
    expect(prices).toEqual([
      '3.9 yours',
      '3.9 yours',
      '3.9 yours',
      '3.9 yours',
      '6.21 typical',
      '7.13 typical',
    ]);
  });

  it('asks for every amount where no amount is typical', async () => {
    await enter(<StartScreen />);
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Your money' }), 'JPY');
    await userEvent.click(screen.getByRole('button', { name: 'Take the example away and start' }));
    await screen.findByRole('heading', { name: 'Your pay' });
    expect(screen.getByText(/Your own workshop,/)).toHaveTextContent('1 of 21');
    expect(screen.getByRole('textbox', { name: 'Your pay' })).toHaveValue('');
  });
});
