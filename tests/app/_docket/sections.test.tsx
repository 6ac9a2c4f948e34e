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
afterEach(cleanup);

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

  it('tells size, free places and what is left over in the fold of the sheets to print', async () => {
    const user = userEvent.setup();
    show(club());
    await user.click(screen.getByRole('button', { name: 'Sheets to print, 47 pages' }));
    const kinds = screen.getAllByRole('listitem').map(({ textContent }) => textContent);
    expect(kinds).toContain('9 × Chest badge, 4 to a sheet: 3.5 × 3.5 in; 47.6 % of the paper left over.');
    expect(kinds).toContainEqual(
      expect.stringMatching(/^1 × Chest badge, 1 on the last sheet: .*3 places spare on it/),
    );
  });

  it('draws the pieces as they lie, lettering mirrored as on the paper', () => {
    show(club());
    const drawing = screen.getByRole('img', { name: 'Letter sheet with 4 of Chest badge, mirrored' });
    const letters = within(drawing).getAllByText('Chest badge');
    expect(letters).toHaveLength(4);
    for (const name of letters)
      expect(name).toHaveAttribute('transform', expect.stringContaining('scale(-1 1)'));
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
  const show = (input: JobInput) =>
    render(
      asWorkspace(
        input,
        <InJob input={input} priced={pricedNow(input)}>
          <PricesSection />
        </InJob>,
      ),
    );

  it('starts on the break of the job, and says what the price stands on', () => {
    show(club());
    expect(screen.getByRole('button', { name: '18.00' })).toHaveAttribute('aria-pressed', 'true');
    expect(screen.getByText('S to XL, 24 to 47 pieces: 18.00 USD.')).toBeInTheDocument();
    expect(screen.getByText(/suggestions for a price list, tax is added later/)).toBeInTheDocument();
  });

  it('shows margin, markup and pay of the size that is picked', async () => {
    const user = userEvent.setup();
    show(club());
    await user.click(screen.getByRole('button', { name: '27.50' }));
    expect(screen.getByText('3XL, 12 to 23 pieces: 27.50 USD.')).toBeInTheDocument();
    expect(screen.getByRole('rowheader', { name: 'least margin inside of 3XL' })).toBeInTheDocument();
    expect(screen.getByRole('rowheader', { name: 'markup of 3XL' })).toBeInTheDocument();
  });

  it('marks the maker’s own price, and says what was suggested', () => {
    show(clubWith({ 'job.lines.0.ownPrices': [{ from: 24, each: 19.25 }] }));
    expect(screen.getByText(/your own prices and suggestions for a price list/)).toBeInTheDocument();
    expect(screen.getByRole('button', { name: '19.25' })).toHaveAttribute('aria-pressed', 'true');
    expect(screen.getByText('yours')).toBeInTheDocument();
    expect(
      screen.getByText(/The suggestion is 18\.00 USD; the price is your own\. At 19\.25 USD the margin is/),
    ).toBeInTheDocument();
  });

  it('says where a break is priced at another quantity than its first', async () => {
    const user = userEvent.setup();
    show(clubWith({ 'workshop.policy.breaks': [1, 40], 'job.piecesPerSession': 45 }));
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
