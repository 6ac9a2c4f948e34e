// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { JobScreen } from '@/app/_jobs/JobScreen';
import { benchPrices, benchStore, clearBench, kept } from '@/tests/app/_docket/bench';
import { layOut } from '@/tests/app/_docket/layOut';

vi.mock('@/app/_store/appDocuments', async () => {
  const { benchStore: appDocuments } = await import('@/tests/app/_docket/bench');
  return { appDocuments };
});
vi.mock('@/app/_pricing/priceService', async () => {
  const { benchPrices: prices } = await import('@/tests/app/_docket/bench');
  return { startPriceService: prices.start };
});

afterEach(() => {
  cleanup();
  clearBench();
});

const priceBar = () => screen.getByRole('region', { name: 'Price' });
const flag = () => screen.getByRole('slider');

describe('the head of the docket', () => {
  it('says in one line what the job is, and in another what the check found', async () => {
    await layOut();
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Ramblers Club shirts');
    expect(
      screen.getByText(/37 shirts · White shirt, 100 % polyester · Back picture and Chest badge · wanted/),
    ).toBeVisible();
    expect(screen.getByText(/^Checked: 2 cautions, \d notes, no stops$/)).toHaveAttribute('role', 'status');
  });

  it('renames the job where its name stands; Escape takes the old name back', async () => {
    await layOut();
    fireEvent.click(screen.getByTitle('Rename'));
    const name = screen.getByLabelText('Name of the job');
    expect(name).toHaveFocus();
    fireEvent.change(name, { target: { value: 'Hikers ' } });
    expect(name).toHaveValue('Hikers ');
    fireEvent.keyDown(name, { key: 'Enter' });
    expect(kept.job().name).toBe('Hikers');
    expect(kept.undoLabel()).toBe('Name of the job');
    await waitFor(() => expect(screen.getByTitle('Rename')).toHaveFocus());
    fireEvent.click(screen.getByTitle('Rename'));
    const again = screen.getByLabelText('Name of the job');
    fireEvent.change(again, { target: { value: 'Others' } });
    fireEvent.keyDown(again, { key: 'Escape' });
    expect(kept.job().name).toBe('Hikers');
  });

  it('keeps the name in force while an emptied one is no name', async () => {
    await layOut();
    fireEvent.click(screen.getByTitle('Rename'));
    fireEvent.change(screen.getByLabelText('Name of the job'), { target: { value: ' ' } });
    expect(screen.getByText(/Something has to stand here/)).toBeVisible();
    expect(kept.job().name).toBe('Ramblers Club shirts');
  });
});

describe('the price bar', () => {
  it('shows price, margin beside markup, pay and hours of the worked example', async () => {
    await layOut();
    expect(priceBar()).toHaveTextContent('19.00 USD a shirt');
    expect(priceBar()).toHaveTextContent('margin 40.5 % · markup 68.2 %');
    expect(priceBar()).toHaveTextContent('56.26 an hour');
    expect(priceBar()).toHaveTextContent('7 h 32 min of your time');
    expect(flag()).toHaveAccessibleDescription(
      /out of pocket 6.58; \+ hands 8.85; full cost 11.13; target 30 % 16.27; most they pay 22.00/,
    );
  });

  it('writes the price the flag is moved to, a price ending at a time', async () => {
    await layOut();
    flag().focus();
    await userEvent.keyboard('{ArrowRight}');
    expect(kept.line().askedPrice).toBe(19.5);
    expect(kept.undoLabel()).toBe('Price of a shirt');
    expect(await screen.findByDisplayValue('19.50')).toBeVisible();
    await waitFor(() => expect(priceBar()).toHaveTextContent('19.50 USD a shirt'));
  });

  it('moves every figure with the pieces of a size', async () => {
    await layOut();
    const pieces = screen.getByRole('textbox', { name: 'L' });
    await userEvent.tripleClick(pieces);
    await userEvent.keyboard('23');
    // 23 in place of 11 make 49 of 37; the curve of the worked example leaves 42.8 % at 37 and 48.7 % at 72 for 20.00.
    expect(screen.getByText('= 49')).toBeVisible();
    await waitFor(() => expect(priceBar()).toHaveTextContent(/19\.00.*margin 4[3-5]/));
  });

  it.each(['1,5', '-3', 'abc', '1e5'])('keeps every figure while “%s” stands as the price', async (text) => {
    await layOut();
    const price = screen.getByRole('textbox', { name: 'Price of a shirt' });
    await userEvent.tripleClick(price);
    await userEvent.paste(text);
    await userEvent.tab();
    expect(price).toHaveValue(text);
    expect(price).toBeInvalid();
    expect(price).toHaveAccessibleDescription(/19(\.00)? USD stays in force\./);
    expect(kept.line().askedPrice).toBe(19);
    expect(priceBar()).toHaveTextContent(/19\.00.*margin 40\.5 %/);
  });

  it('stands at the target, and says so, while no price is decided', async () => {
    await layOut();
    await userEvent.clear(screen.getByLabelText('Price of a shirt', { selector: 'input' }));
    expect(kept.line().askedPrice).toBeNull();
    await waitFor(() => expect(priceBar()).toHaveTextContent('16.27 USD a shirt, target'));
    expect(priceBar()).toHaveTextContent('margin 30 %');
    expect(screen.getByText('Not decided: the target price stands in.')).toBeVisible();
  });

  it('shows the flag without the tax a price has inside, says so, and writes the price with it', async () => {
    await layOut('fair-shirts');
    expect(priceBar()).toHaveTextContent('28.00 USD · Fern shirt');
    expect(flag()).toHaveAttribute('aria-valuetext', expect.stringMatching(/^26\.17,/));
    expect(
      screen.getByText(/28\.00 with 7 % tax inside is 26\.17 without: there the flag stands/),
    ).toBeVisible();
    flag().focus();
    await userEvent.keyboard('{ArrowLeft}');
    expect(kept.job('fair-shirts').lines[0]?.askedPrice).toBe(27.5);
  });

  it('lets several lines choose whose price the flag moves', async () => {
    await layOut('fair-shirts');
    await userEvent.selectOptions(screen.getByLabelText('The flag moves the price of'), 'Otter shirt');
    flag().focus();
    await userEvent.keyboard('{ArrowRight}');
    expect(kept.job('fair-shirts').lines.map(({ askedPrice }) => askedPrice)).toEqual([28, 28, 28.5, 28]);
    expect(kept.undoLabel()).toBe('Price of Otter shirt');
  });

  it('keeps the last good price, marked as such, while a stop stands', async () => {
    await layOut();
    act(() => {
      benchStore().actions.edit('Rights', [
        {
          do: 'change',
          kind: 'artwork',
          id: 'club-crest',
          to: (body) => ({ ...body, rights: { ...body.rights, state: 'none' } }),
        },
      ]);
    });
    await waitFor(() => expect(priceBar()).toHaveTextContent('last good price'));
    expect(priceBar()).toHaveTextContent('19.00');
    expect(flag()).toHaveAttribute('aria-disabled', 'true');
    expect(screen.getByText(/^Checked: 1 stop, 1 caution, \d notes$/)).toBeVisible();
  });
});

describe('a stop', () => {
  it('goes by its button, and the last good price gives way to the price', async () => {
    await layOut();
    act(() => {
      benchStore().actions.edit('Pieces in all', [
        {
          do: 'change',
          kind: 'job',
          id: 'club-order',
          to: (body) => ({ ...body, lines: body.lines.map((line) => ({ ...line, orderedQuantity: 38 })) }),
        },
      ]);
    });
    const sentence = await screen.findByText(/the sizes add up to 37, the order says 38/);
    await waitFor(() => expect(priceBar()).toHaveTextContent('last good price'));
    expect(sentence).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'The order is for 37' }));
    await waitFor(() => expect(priceBar()).not.toHaveTextContent('last good price'));
    expect(screen.queryByText(/the sizes add up to/)).toBeNull();
  });
});

describe('a docket that cannot be shown as it should', () => {
  it('says that a job is not here', async () => {
    render(<JobScreen jobId="nobody" />);
    expect(await screen.findByRole('heading', { name: 'This job is not here' })).toBeVisible();
    expect(screen.getByRole('link', { name: 'To the jobs' })).toHaveAttribute('href', '/jobs');
  });

  it('says that the sums failed, why, and that all is kept', async () => {
    await layOut();
    benchPrices.failing = true;
    fireEvent.change(screen.getByRole('textbox', { name: 'L' }), { target: { value: '12' } });
    const alert = await screen.findByRole('alert');
    expect(alert).toHaveTextContent('The sums could not be made. That is a fault of this page');
    expect(alert).toHaveTextContent('out of paper');
    expect(priceBar()).toHaveTextContent('19.00 USD a shirt');
    expect(kept.line().quantities).toContainEqual({ size: 'L', quantity: 12 });
  });
});

describe('the sections', () => {
  it('stand in the order of the work under headings of one level', async () => {
    await layOut();
    // The sections of figures come a moment later, all at once.
    await screen.findByRole('heading', { name: 'Prices' });
    const names = screen.getAllByRole('heading', { level: 2 }).map(({ textContent }) => textContent);
    expect(names).toEqual([
      'The job',
      'Checks',
      'Sheets',
      'Cost sheet',
      'Prices',
      'Margin against batch size',
      'What would raise it',
      'Charges around the piece',
      'Ways of selling',
    ]);
    expect(within(screen.getByRole('region', { name: 'The job' })).getByText('= 37')).toBeVisible();
  });
});
