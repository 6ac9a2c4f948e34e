// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, configure, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { CostTable } from '@/app/_docket/costs/CostTable';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { ShowSetting } from '@/app/_trace/showSetting';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

// Nothing here is hidden; asking after every ancestor's style takes most of the time of a large table.
configure({ defaultHidden: true });
afterEach(cleanup);

/** All thirty-seven in one size: whatever a piece in L costs stays the same, in a third of the figures. */
const allInL = {
  'job.lines.0.quantities': [{ size: 'L', quantity: 37 }],
} as const;

function table(
  input: JobInput = clubWith(allInL),
  show: (path: readonly (string | number)[]) => void = () => {},
) {
  const [line] = input.job.lines;
  if (line === undefined) throw new Error('the job has no line');
  return (
    <NumberLocale value="en-US">
      <MeasuresContext value={measuresOf(input.workshop)}>
        <ShowSetting value={{ isHere: ({ document }) => document === 'job', show: ({ path }) => show(path) }}>
          <CostTable names={{ sheet: costed(input).sheet, input }} line={line} size="L" />
        </ShowSetting>
      </MeasuresContext>
    </NumberLocale>
  );
}

const figure = (name: string) => screen.getByRole('button', { name });
const panel = () => screen.getByRole('region');

/** Presses Tab until a button of that name has the focus. */
async function tabTo(user: ReturnType<typeof userEvent.setup>, name: RegExp) {
  for (let presses = 0; presses < 40; presses += 1) {
    await user.tab();
    if (name.test(document.activeElement?.textContent ?? '')) return;
  }
  throw new Error(`the keyboard never came to ${name}`);
}

describe('a figure of the cost sheet', () => {
  it('opens by keyboard, leads three levels down to what was typed, and closes where it began', async () => {
    const user = userEvent.setup();
    render(table());
    const ink = figure('Ink, L: 0.14');
    expect(ink).toHaveAttribute('aria-expanded', 'false');
    ink.focus();
    await user.keyboard('{Enter}');
    expect(ink).toHaveAttribute('aria-expanded', 'true');
    expect(ink).toHaveAttribute('aria-controls', panel().id);
    expect(screen.getByRole('heading', { name: 'Ink, one piece in L: 0.143 USD' })).toHaveFocus();

    await tabTo(user, /^Ink, nothing spoiled/);
    await user.keyboard('{Enter}');
    expect(
      screen.getByRole('heading', { name: /^Ink, nothing spoiled, one piece in L: 0.894 mL/ }),
    ).toHaveFocus();

    await tabTo(user, /^Ink of one Chest badge/);
    await user.keyboard('{Enter}');
    await tabTo(user, /^Ink laid down where one channel covers fully/);
    await user.keyboard('{Enter}');

    const way = within(panel()).getByRole('navigation');
    expect(
      within(way)
        .getAllByRole('listitem')
        .map(({ textContent }) => textContent),
    ).toEqual([
      'Ink',
      'Ink, nothing spoiled',
      'Ink of one Chest badge',
      'Ink laid down where one channel covers fully',
    ]);
    expect(panel()).toHaveTextContent('0.0065 mL/in²');
    expect(panel()).toHaveTextContent('typical');
    expect(panel()).toHaveTextContent('set on Nov 25, 2026');
    expect(within(panel()).getByRole('link', { name: 'in the workshop' })).toHaveAttribute(
      'href',
      '/workshop#workshop-rates-laydown',
    );

    await user.keyboard('{Escape}');
    expect(screen.queryByRole('region')).not.toBeInTheDocument();
    expect(ink).toHaveFocus();
    expect(ink).toHaveAttribute('aria-expanded', 'false');
  });

  it('goes back up by the way it came', async () => {
    const user = userEvent.setup();
    render(table());
    await user.click(figure('Your time, L: 3.58'));
    await user.click(screen.getByRole('button', { name: /^Paid time, nothing spoiled/ }));
    await user.click(within(screen.getByRole('navigation')).getByRole('button', { name: 'Your time' }));
    expect(screen.getByRole('heading', { name: /^Your time, one piece in L/ })).toHaveFocus();
    expect(screen.queryByRole('navigation')).not.toBeInTheDocument();
  });

  it('says whose a value is and how often it was measured', async () => {
    const user = userEvent.setup();
    render(table());
    await user.click(figure('Normal spoilage, L: 0.45'));
    await user.click(screen.getByRole('button', { name: /^Sheets, expected use/ }));
    await user.click(screen.getByRole('button', { name: /^Sheets printed/ }));
    await user.click(screen.getByRole('button', { name: /^Sheets for Back picture, with replacements/ }));
    await user.click(screen.getByRole('button', { name: /^Printed sheets rejected before pressing/ }));
    expect(panel()).toHaveTextContent('2 %measured 212×set on Nov 25, 2026');
  });

  it('leads to the field on the page itself where the job sets the value', async () => {
    const user = userEvent.setup();
    const show = vi.fn();
    const wage = { value: 24, unit: 'money/h', date: TODAY, origin: 'yours' };
    render(table(clubWith({ ...allInL, 'job.rates.wage': wage }), show));
    await user.click(figure('Your time, whole job: 176.68'));
    await user.click(screen.getByRole('button', { name: /^Your pay 24.00 USD an hour/ }));
    await user.click(screen.getByRole('button', { name: 'for this job alone' }));
    expect(show).toHaveBeenCalledExactlyOnceWith(['rates', 'wage']);
  });

  it('folds a long sum, and shows all of it on a press', async () => {
    const user = userEvent.setup();
    render(table());
    await user.click(figure('Full cost, L: 10.88'));
    expect(within(panel()).getAllByRole('listitem')).toHaveLength(5);
    await user.click(screen.getByRole('button', { name: 'and 8 more to add' }));
    expect(within(panel()).getAllByRole('listitem')).toHaveLength(13);
    expect(within(panel()).getByRole('button', { name: /^Reprint allowance/ })).toBeInTheDocument();
  });

  it('says when it was shown a cent away from itself, so that its column adds up', async () => {
    const user = userEvent.setup();
    render(table(club()));
    // 0.356 by its sum: four other lines of the column had more to round up.
    await user.click(figure('Electricity, whole job: 0.35'));
    expect(panel()).toHaveTextContent('The table shows 0.35 so that its column adds up to the cent');
    expect(panel()).toHaveTextContent('by itself it would be 0.36');
    await user.click(figure('Ink, L: 0.14'));
    expect(panel()).not.toHaveTextContent('The table shows');
  });

  it('keeps one figure open at a time, and tells when its size has gone', async () => {
    const user = userEvent.setup();
    const { rerender } = render(table(club()));
    await user.click(figure('Ink, 3XL: 0.14'));
    await user.click(figure('Sheets, 3XL: 0.19'));
    expect(screen.getAllByRole('region')).toHaveLength(1);
    const fewer = club().job.lines[0]?.quantities.filter(({ size }) => size !== '3XL');
    rerender(table(clubWith({ 'job.lines.0.quantities': fewer, 'job.lines.0.orderedQuantity': null })));
    expect(panel()).toHaveTextContent('This figure is no longer part of the job.');
  });
});

describe('the cost table by arrow keys', () => {
  it('moves from figure to figure in both ways, over the gap where the whole job has none', async () => {
    const user = userEvent.setup();
    render(table(club()));
    figure('Full cost, 3XL: 13.60').focus();
    await user.keyboard('{ArrowRight}');
    expect(figure('Full cost, whole job: 411.79')).toHaveFocus();
    await user.keyboard('{ArrowDown}');
    expect(figure('Paid time, whole job: 7 h 32 min')).toHaveFocus();
    await user.keyboard('{ArrowLeft}{ArrowUp}');
    expect(figure('Cost of one more, 3XL: 10.31')).toHaveFocus();
  });
});
