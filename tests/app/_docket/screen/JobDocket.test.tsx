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
  it('says in one line whom the job is for and when it is wanted, and what the check found', async () => {
    await layOut();
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Ramblers Club shirts');
    expect(screen.getByText(/^for Exampleton Ramblers Club, Alex Placeholder, wanted /)).toBeVisible();
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
  it('shows the price as the buyer sees it, what it pays, and what the order comes to', async () => {
    await layOut();
    expect(priceBar()).toHaveTextContent('19.00 a shirt, USD, tax added later');
    expect(priceBar()).toHaveTextContent('pays you 56.26 an hour, selling included');
    // 37 × 19.00 and the up-charges; 7 % on it.
    expect(priceBar()).toHaveTextContent('711.50 for 37; with tax 761.31');
    expect(priceBar()).toHaveTextContent('margin 40.5 %');
    expect(priceBar().querySelector('[data-dashed]')).toBeNull();
    expect(flag()).toHaveAccessibleDescription(
      /out of pocket 6.58; your hands 8.85; full cost 11.13; target 30 % 16.27; most they pay 22.00/,
    );
  });

  it('leads to the first figure that nobody has told yet', async () => {
    await layOut();
    await screen.findByRole('heading', { name: 'Prices' });
    await userEvent.click(screen.getByRole('button', { name: /^\d+ of \d+ figures are typical$/ }));
    await waitFor(() => expect(screen.getByLabelText(/^Ink laid down/, { selector: 'input' })).toHaveFocus());
  });

  it('writes the price the flag is moved to, a price ending at a time', async () => {
    await layOut();
    flag().focus();
    await userEvent.keyboard('{ArrowRight}');
    expect(kept.line().askedPrice).toBe(19.5);
    expect(kept.undoLabel()).toBe('Price of a shirt');
    expect(await screen.findByDisplayValue('19.50')).toBeVisible();
    await waitFor(() => expect(priceBar()).toHaveTextContent('19.50 a shirt, USD'));
  });

  it('moves every figure with the pieces of a size', async () => {
    await layOut();
    const pieces = screen.getByRole('textbox', { name: 'L' });
    await userEvent.tripleClick(pieces);
    await userEvent.keyboard('14');
    // 14 in place of 11 make 40 of 37. Of the worked 711.50 are 40.5 % left, 288.2; three more bring 57.00 and take 25.67
    // and 1.55 % of fees: 318.6 of 768.50.
    expect(screen.getByText('= 40')).toBeVisible();
    await waitFor(() => expect(priceBar()).toHaveTextContent(/19\.00.*margin 41\.[4-6]/));
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

  it('suggests the price of the list, dashed, while none is decided, and nothing else competes with it', async () => {
    await layOut();
    await userEvent.clear(screen.getByLabelText('Price of a shirt', { selector: 'input' }));
    expect(kept.line().askedPrice).toBeNull();
    // By the list 37 pay as 42 do, 42 × 15.50 = 651.00: 17.59 each, 17.50 on the ending.
    await waitFor(() =>
      expect(priceBar()).toHaveTextContent('17.50 a shirt, USD, suggested, tax added later'),
    );
    expect(priceBar()).toHaveTextContent(/would pay you \d/);
    expect(priceBar().querySelector('[data-dashed]')).not.toBeNull();
    expect(flag()).toHaveAttribute('aria-valuenow', '17.5');
    expect(priceBar().querySelectorAll('[data-figure="price"]')).toHaveLength(1);
  });

  it('has flag, marks and bounds in the money that is written, tax inside, and writes it so', async () => {
    await layOut('fair-shirts');
    expect(priceBar()).toHaveTextContent('28.00 Fern shirt, USD, incl. 7 % tax');
    // 28 ÷ 1.07.
    expect(priceBar()).toHaveTextContent('26.17 without tax');
    expect(flag()).toHaveAttribute('aria-valuetext', expect.stringMatching(/^28\.00, margin/));
    flag().focus();
    await userEvent.keyboard('{ArrowLeft}');
    expect(kept.job('fair-shirts').lines[0]?.askedPrice).toBe(27.5);
  });

  it('says that selling is not counted where nobody has said what it takes, and leads there', async () => {
    await layOut('fair-shirts');
    expect(screen.getByRole('link', { name: 'selling not counted' })).toHaveAttribute(
      'href',
      '/workshop#workshop-channels-1-sellingMinutesPerPiece',
    );
  });

  it('lets several lines choose whose price the flag moves', async () => {
    await layOut('fair-shirts');
    await userEvent.selectOptions(screen.getByLabelText('The flag moves the price of'), 'Otter shirt');
    flag().focus();
    await userEvent.keyboard('{ArrowRight}');
    expect(kept.job('fair-shirts').lines.map(({ askedPrice }) => askedPrice)).toEqual([28, 28, 28.5, 28]);
    expect(kept.undoLabel()).toBe('Price of Otter shirt');
  });

  it('has no price while a stop stands, says why, and marks the last good one as such', async () => {
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
    await waitFor(() => expect(priceBar()).toHaveTextContent('last good price 19.00'));
    expect(priceBar()).toHaveTextContent(/^no price/);
    expect(priceBar()).toHaveTextContent('until this is mended');
    expect(priceBar()).toHaveTextContent(/Club crest/);
    expect(priceBar().querySelector('[data-dashed]')).not.toBeNull();
    expect(screen.queryByRole('slider')).toBeNull();
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
    await waitFor(() => expect(priceBar()).toHaveTextContent(/the sizes add up to 37, the order says 38/));
    expect(priceBar()).toHaveTextContent('last good price');
    await userEvent.click(within(priceBar()).getByRole('button'));
    await waitFor(() => expect(priceBar()).not.toHaveTextContent('last good price'));
    expect(priceBar()).toHaveTextContent('a shirt, USD');
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
    expect(priceBar()).toHaveTextContent('19.00 a shirt, USD');
    expect(kept.line().quantities).toContainEqual({ size: 'L', quantity: 12 });
  });
});

describe('the sections', () => {
  it('stand in the order of the work under headings of one level', async () => {
    await layOut();
    // The sections of figures come a moment later, one after the other.
    await screen.findByRole('heading', { name: 'Ways of selling' });
    const names = screen.getAllByRole('heading', { level: 2 }).map(({ textContent }) => textContent);
    expect(names).toEqual([
      'The job',
      'Checks',
      'Sheets',
      'Cost',
      'Prices',
      'Batch',
      'What would raise it',
      'Charges around the piece',
      'Ways of selling',
    ]);
    expect(within(screen.getByRole('region', { name: 'The job' })).getByText('= 37')).toBeVisible();
  });
});
