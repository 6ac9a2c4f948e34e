// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { cleanup, configure, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import type { ReactNode } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { JobRate } from '@/app/_docket/costs/JobRate';
import { PricesSection } from '@/app/_docket/prices/PricesSection';
import { SheetsSection } from '@/app/_docket/sheets/SheetsSection';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { InJob, notYetPriced, pricedNow, stoppedSince } from './inJob';

configure({ defaultHidden: true });
afterEach(() => {
  cleanup();
  // Which folds stand open is remembered on the device.
  localStorage.clear();
});

const asWorkspace = (input: JobInput, children: ReactNode) => (
  <NumberLocale value="en-US">
    <MeasuresContext value={measuresOf(input.workshop)}>{children}</MeasuresContext>
  </NumberLocale>
);

describe('the sheets', () => {
  const show = (input: JobInput, priced = pricedNow(input)) =>
    render(
      asWorkspace(
        input,
        <InJob input={input} priced={priced}>
          <SheetsSection />
        </InJob>,
      ),
    );

  const captions = () => screen.getAllByRole('figure').map((figure) => figure.textContent);

  it('answers with the sheets the job takes, spoiled ones in it, and their size where it has a name', () => {
    show(club());
    // 52.6 letter sheets of the worked example, the last one begun.
    expect(screen.getByText('53 letter sheets').closest('p')).toHaveTextContent(
      '53 letter sheets and 35 mL of ink',
    );
  });

  it('draws each kind of sheet once, and says how many there are', () => {
    show(club());
    expect(captions()).toEqual([
      expect.stringContaining('37 × Back picture'),
      expect.stringContaining('9 × Chest badge, 4 on each'),
      expect.stringContaining('1 × Chest badge, the last sheet'),
    ]);
  });

  it('speaks of no last sheet where there is but one', () => {
    show(
      clubWith({
        'job.lines.0.quantities': [{ size: 'L', quantity: 1 }],
        'job.lines.0.orderedQuantity': null,
      }),
    );
    expect(captions().some((caption) => caption?.endsWith('1 × Chest badge'))).toBe(true);
    expect(screen.queryByText(/the last sheet/)).toBeNull();
  });

  it('tells size, free places and what is left over in the fold of the sheets to print', async () => {
    const user = userEvent.setup();
    show(club());
    await user.click(screen.getByRole('button', { name: 'Sheets to print, 47 for the good pieces' }));
    const kinds = screen.getAllByRole('listitem').map(({ textContent }) => textContent);
    expect(kinds).toContain('9 × Chest badge, 4 to a sheet: 3.5 × 3.5 in; 47.6 % of the paper left over.');
    expect(kinds).toContainEqual(
      expect.stringMatching(/^1 × Chest badge, 1 on the last sheet: .*3 places spare on it/),
    );
  });

  it('names no number of pages while that is being worked out', async () => {
    const user = userEvent.setup();
    show(club());
    await user.click(screen.getByRole('button', { name: /^Sheets to print/ }));
    expect(screen.getByRole('button', { name: 'Every sheet' })).toBeInTheDocument();
    expect(screen.getByText('How many pages it takes is being worked out.')).toBeInTheDocument();
    expect(screen.queryByText(/0 pages/)).toBeNull();
  });

  it('draws the pieces as they lie, lettering mirrored as on the paper', () => {
    show(club());
    const drawing = screen.getByRole('img', { name: 'Letter sheet with 1 of Back picture, mirrored' });
    // 8 in are 203 mm; 13 px of a drawing 116 px high are 31.7 mm: ten letters to a line.
    const [letters] = drawing.querySelectorAll('text');
    expect([...(letters?.children ?? [])].map((line) => line.textContent)).toEqual(['Back', 'picture']);
    expect(letters).toHaveAttribute('transform', expect.stringContaining('scale(-1 1)'));
  });

  it('writes no name on a piece that it does not fit on in letters of 13 px', () => {
    show(club());
    const drawing = screen.getByRole('img', { name: 'Letter sheet with 4 of Chest badge, mirrored' });
    expect(within(drawing).queryByText(/Chest/)).toBeNull();
    expect(screen.getByText(/Chest badge, 4 on each/)).toBeInTheDocument();
  });

  it('draws a picture that is flipped already and not mirrored again just the same', () => {
    show(clubWith({ 'artwork:club-crest.mirrored': true, 'job.lines.0.placements.1.mirror': false }));
    expect(
      screen.getByRole('img', { name: 'Letter sheet with 4 of Chest badge, mirrored' }),
    ).toBeInTheDocument();
  });

  it('tells the ink and what of it is lost', async () => {
    const user = userEvent.setup();
    show(club());
    await user.click(screen.getByRole('button', { name: 'Ink and presses' }));
    expect(screen.getByRole('button', { name: 'Ink, whole job: 35.1 mL' })).toBeInTheDocument();
    expect(screen.getByText('of it 6.8 mL lost to cleaning and spray')).toBeInTheDocument();
  });

  it('marks last good figures as such', () => {
    const input = club();
    show(input, stoppedSince(pricedNow(input)));
    expect(screen.getByText('Last good figures.')).toBeInTheDocument();
  });

  it('says what to wait for while nothing is costed', () => {
    show(club(), notYetPriced);
    expect(screen.getByText(/stand here once nothing under “Checks” stops the job/)).toBeInTheDocument();
  });
});

describe('the prices', () => {
  const typed = { 'job.lines.0.breaks': [1, 6, 12, 24, 48] };
  const show = (input: JobInput) =>
    render(
      asWorkspace(
        input,
        <InJob input={input} priced={pricedNow(input)}>
          <PricesSection />
        </InJob>,
      ),
    );
  const ladder = () =>
    within(screen.getByRole('list', { name: 'Prices by quantity' }))
      .getAllByRole('listitem')
      .map(({ textContent }) => textContent);
  const forYou = async () => {
    const user = userEvent.setup();
    await user.click(screen.getByRole('button', { name: 'For you: margin, pay an hour' }));
    return user;
  };

  it('stand in a row, the first orders as the sum they pay and the one of the job marked', () => {
    // Worked by hand at typed breaks: 2 to 5 pay as 6 do, 6 × 34.50.
    show(clubWith(typed));
    expect(ladder()).toEqual([
      'up to 5, in all207.00 the orderone alone 144.50',
      'from 634.50',
      'from 1223.50',
      'from 24, this job18.00',
      'from 4815.50',
    ]);
    expect(screen.getByText('34.50 down to 15.50').closest('p')).toHaveTextContent(
      'From 34.50 down to 15.50; no order pays more than a larger one',
    );
    const more = screen.getByText('a shirt, S to XL, tax added later').closest('p');
    expect(more).toHaveTextContent('2XL +2.50');
    expect(more).toHaveTextContent('3XL +4.00');
  });

  it('say what this job asks beside the list, and ask the list’s price on a press', () => {
    show(clubWith(typed));
    expect(
      screen.getByText(
        'This job asks 19.00, 1.00 over the list; 2XL +1.50 against +2.50 and 3XL +2.50 against +4.00.',
      ),
    ).toBeInTheDocument();
    expect(screen.getByRole('button', { name: 'Ask 18.00' })).toBeInTheDocument();
    expect(screen.getByText(/^Every order leaves 30 % or more after your pay\./)).toBeInTheDocument();
  });

  it('tell a start and a price a piece where the set-up is apart', () => {
    show(clubWith({ 'job.lines.0.selling': 'setUpApart' }));
    expect(ladder()).toEqual(['to start132.00', 'and each12.50']);
  });

  it('are cards of one price a size for what is made to stock', () => {
    show(clubWith({ 'job.lines.0.selling': 'onePrice', 'job.lines.0.askedPrice': null }));
    const cards = within(screen.getByRole('region', { name: 'S to XL' })).getAllByRole('listitem');
    expect(cards.map(({ textContent }) => textContent)).toEqual([
      expect.stringMatching(/^16\.00leaves 3\d(\.\d)? %pays \d\d\.\d\d an hour$/),
    ]);
  });

  it('start, opened, on the break of the job, and say what the price stands on', async () => {
    show(clubWith(typed));
    await forYou();
    expect(screen.getAllByRole('button', { name: '18.00' })[0]).toHaveAttribute('aria-pressed', 'true');
    expect(screen.getByText('S to XL, 24 to 47 pieces: 18.00 USD.')).toBeInTheDocument();
  });

  it('show margin, markup and pay of the size that is picked', async () => {
    show(clubWith(typed));
    const user = await forYou();
    await user.click(screen.getByRole('button', { name: '27.50' }));
    expect(screen.getByText('3XL, 12 to 23 pieces: 27.50 USD.')).toBeInTheDocument();
    expect(screen.getByRole('rowheader', { name: 'least margin inside of 3XL' })).toBeInTheDocument();
    expect(screen.getByRole('rowheader', { name: 'markup of 3XL' })).toBeInTheDocument();
  });

  it('mark the maker’s own price, and say what was suggested', async () => {
    show(clubWith({ ...typed, 'job.lines.0.ownPrices': [{ from: 24, each: 19.25 }] }));
    await forYou();
    expect(screen.getByRole('button', { name: '19.25' })).toHaveAttribute('aria-pressed', 'true');
    expect(screen.getByText('yours')).toBeInTheDocument();
    expect(
      screen.getByText(/The suggestion is 18\.00 USD; the price is your own\. At 19\.25 USD the margin is/),
    ).toBeInTheDocument();
  });

  it('say where a break is priced at another quantity than its first', async () => {
    show(clubWith({ 'job.lines.0.breaks': [1, 40], 'job.piecesPerSession': 45 }));
    const user = await forYou();
    const [, from40 = document.body] = screen.getAllByRole('button', { name: /^[0-9]+\.[0-9]{2}$/ });
    await user.click(from40);
    expect(
      screen.getByText(/The least it leaves is at 46 pieces: there one more sheet or session is begun/),
    ).toBeInTheDocument();
  });
});

describe('a rate for this job', () => {
  const wage = { value: 18, unit: 'money/h', date: TODAY, origin: 'yours' } as const;

  it('stands beside the workshop’s value and its mark, and becomes the job’s own when typed', async () => {
    const user = userEvent.setup();
    const onSet = vi.fn();
    render(asWorkspace(club(), <JobRate name="wage" workshop={wage} own={null} onSet={onSet} />));
    expect(screen.getByText(/18.00 USD an hour/)).toHaveTextContent('yours');
    await user.type(screen.getByRole('textbox', { name: 'Your pay' }), '2');
    expect(onSet).toHaveBeenCalledExactlyOnceWith({
      value: 2,
      unit: 'money/h',
      date: expect.stringMatching(/^\d{4}-\d{2}-\d{2}$/),
      origin: 'yours',
    });
  });

  it('follows the workshop again on a press, or when it is emptied', async () => {
    const user = userEvent.setup();
    const onSet = vi.fn();
    render(
      asWorkspace(club(), <JobRate name="wage" workshop={wage} own={{ ...wage, value: 24 }} onSet={onSet} />),
    );
    await user.click(screen.getByRole('button', { name: 'Follow the workshop again' }));
    await user.clear(screen.getByRole('textbox', { name: 'Your pay' }));
    expect(onSet.mock.calls).toEqual([[null], [null]]);
  });
});
