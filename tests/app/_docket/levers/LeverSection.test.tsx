// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, configure, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useMemo } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { studies } from '@/app/_studies/studies';
import type { JobInput } from '@/shared/schemas/request';
import { clearBench, kept } from '@/tests/app/_docket/bench';
import { layOut } from '@/tests/app/_docket/layOut';
import { grid } from '@/tests/fixtures/costed';

vi.mock('@/app/_store/appDocuments', async () => {
  const { benchStore: appDocuments } = await import('@/tests/app/_docket/bench');
  return { appDocuments };
});
vi.mock('@/app/_pricing/priceService', async () => {
  const { benchPrices: prices } = await import('@/tests/app/_docket/bench');
  return { startPriceService: prices.start };
});
/* Studies answer at once here, by the same functions that the worker runs. */
vi.mock('@/app/_studies/useStudy', () => ({
  useStudy: (name: keyof typeof studies, input: JobInput | null, question: unknown) => {
    const key = JSON.stringify(question);
    const newest = useMemo(() => {
      if (input === null || (name !== 'levers' && name !== 'seek')) return null;
      const study = studies[name] as (input: JobInput, of: typeof grid, question: unknown) => unknown;
      const answer = study(input, grid, JSON.parse(key));
      return answer === null ? null : { input, question: JSON.parse(key), answer };
    }, [name, input, key]);
    return { newest, failure: null };
  },
}));

configure({ defaultHidden: true });
afterEach(() => {
  cleanup();
  clearBench();
});

const part = async () => within(await screen.findByRole('region', { name: 'What would raise it' }));

describe('what would raise a job', () => {
  it('is told as single changes with what each brings, tried by one tap and taken back by one', async () => {
    await layOut();
    const section = await part();
    const levers = await section.findByRole('list', { name: 'Levers, biggest first' });
    const row = within(levers)
      .getAllByRole('listitem')
      .find(({ textContent }) => /Ask 0\.50 USD more a piece/.test(textContent ?? ''));
    if (row === undefined) throw new Error('the next price is no lever');
    // The same figures as the study's own: 2.42 an hour more for half a dollar a shirt.
    expect(row).toHaveTextContent('+2.42 an hour');
    await userEvent.click(within(row).getByRole('button', { name: /^Try/ }));
    expect(kept.job().lines[0]?.askedPrice).toBe(19.5);
    const tried = within(await section.findByRole('list', { name: 'Tried' }));
    await userEvent.click(tried.getByRole('button', { name: 'Take it back' }));
    expect(kept.job().lines[0]?.askedPrice).toBe(19);
    expect(section.queryByRole('list', { name: 'Tried' })).not.toBeInTheDocument();
  });

  it('keeps its promise on the price bar, and gives it back', async () => {
    await layOut();
    const section = await part();
    const levers = await section.findByRole('list', { name: 'Levers, biggest first' });
    const row = within(levers)
      .getAllByRole('listitem')
      .find(({ textContent }) => textContent?.includes('Ask for 3 pieces more, 40 in all'));
    if (row === undefined) throw new Error('three pieces more are no lever');
    expect(row).toHaveTextContent('+2.26 an hour');
    const priceBar = screen.getByRole('region', { name: 'Price' });
    await userEvent.click(within(row).getByRole('button', { name: /^Try/ }));
    // 40.5 % and the 1.05 points that were promised.
    await waitFor(() => expect(priceBar).toHaveTextContent('margin 41.6 %'));
    await userEvent.click(await section.findByRole('button', { name: 'Take it back' }));
    await waitFor(() => expect(priceBar).toHaveTextContent('margin 40.5 %'));
  });

  it('offers nothing to take back where the maker changed the field since', async () => {
    await layOut();
    const section = await part();
    const row = (await section.findAllByRole('listitem')).find(({ textContent }) =>
      /Ask 0\.50 USD more a piece/.test(textContent ?? ''),
    );
    if (row === undefined) throw new Error('the next price is no lever');
    await userEvent.click(within(row).getByRole('button', { name: /^Try/ }));
    const price = screen.getByRole('textbox', { name: 'Price of a shirt' });
    await userEvent.clear(price);
    await userEvent.type(price, '21');
    await waitFor(() => expect(section.getByText(/You have changed it since/)).toBeInTheDocument());
    expect(section.queryByRole('button', { name: 'Take it back' })).not.toBeInTheDocument();
    expect(kept.job().lines[0]?.askedPrice).toBe(21);
  });
});

describe('the answer of what would raise a job', () => {
  it('names what the three best bring that keep the product, and folds the others by kind', async () => {
    await layOut();
    const section = await part();
    expect((await section.findByText('2.50 more an hour')).closest('p')).toHaveTextContent(
      'About 2.50 more an hour from any of three small changes',
    );
    const levers = section.getByRole('list', { name: 'Levers, biggest first' });
    expect(within(levers).getAllByRole('listitem')).toHaveLength(3);
    expect(within(levers).queryByText(/^Leave /)).not.toBeInTheDocument();
    await userEvent.click(section.getByRole('button', { name: '2 that change what is made' }));
    expect(section.getByText(/^Leave Back picture out of/)).toBeInTheDocument();
    expect(section.getByRole('button', { name: '3 smaller ones' })).toBeInTheDocument();
  });
});

describe('the sums asked the other way round', () => {
  const asking = async () => {
    await layOut();
    const section = await part();
    await userEvent.click(await section.findByRole('button', { name: 'Ask the sums' }));
    return section;
  };

  it('give the price for a margin, and take it over lifted to the ending', async () => {
    const section = await asking();
    // 602.05 for 37 pieces at 30 %: 16.27 each, which ends on 16.50.
    expect(
      await section.findByText(/^16\.27 USD a piece, 602\.05 USD for all without tax, leaves 30 %/),
    ).toBeVisible();
    await userEvent.click(section.getByRole('button', { name: 'Ask 16.50 USD for every piece' }));
    expect(kept.job().lines[0]).toMatchObject({ askedPrice: 16.5, upCharges: [] });
  });

  it('say plainly what no price can give', async () => {
    const section = await asking();
    const margin = await section.findByRole('textbox', { name: 'Margin' });
    await userEvent.clear(margin);
    expect(section.getByText('A figure is missing in the question.')).toBeInTheDocument();
    await userEvent.type(margin, '100');
    expect(section.getByText(/take the whole price: no price is high enough/)).toBeInTheDocument();
    await userEvent.clear(margin);
    await userEvent.type(margin, '99');
    // Half the money comes by card: 1.5515 % of fees stand beside it.
    expect(
      section.getByText(
        /A margin of 99 % and fees of 1\.6 % take the whole price: no price is high enough\./,
      ),
    ).toBeInTheDocument();
  });

  it('give the largest wage, to count with in this job', async () => {
    const section = await asking();
    await userEvent.selectOptions(
      await section.findByRole('combobox', { name: 'I look for' }),
      'the largest wage a price can bear',
    );
    // The job pays 56.26 an hour at its prices: profit 288.37 over 7.54 h on top of 18.00, less the allowance for
    // reprints, which the wage carries along.
    const told = await section.findByText(/^At most \d\d\.\d\d USD an hour/);
    const wage = Number(/(\d\d\.\d\d)/.exec(told.textContent ?? '')?.[1]);
    expect(wage).toBeGreaterThan(52);
    expect(wage).toBeLessThan(56.26);
    await userEvent.click(section.getByRole('button', { name: /^Count with/ }));
    expect(kept.job().rates.wage).toMatchObject({ origin: 'yours', unit: 'money/h' });
  });
});
