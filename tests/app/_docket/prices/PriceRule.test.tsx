// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { cleanup, configure, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { PriceFalls } from '@/app/_docket/prices/PriceFalls';
import { PriceOrders } from '@/app/_docket/prices/PriceOrders';
import { PriceRule, useListFormat } from '@/app/_docket/prices/PriceRule';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { pricesAnswer } from '@/app/_words/docket/pricesWords';
import { type BreaksAnswer, breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import type { Line } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { InJob } from '@/tests/app/_docket/inJob';
import { clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

configure({ defaultHidden: true });
afterEach(cleanup);

const own = [
  { from: 1, each: 26 },
  { from: 6, each: 23 },
  { from: 12, each: 20 },
  { from: 24, each: 18 },
  { from: 48, each: 16.5 },
];

/** Sold by typed breaks as they stand, unless the fields say otherwise. */
const asListed = { 'job.lines.0.breaks': [1, 6, 12, 24, 48], 'job.lines.0.selling': 'asListed' };

function show(fields: Readonly<Record<string, unknown>>) {
  const input: JobInput = clubWith({ ...asListed, ...fields });
  const [line] = input.job.lines;
  const answer = breaksAnswer(input, grid, { lineId: 'shirts', quantities: [37] });
  if (line === undefined || answer === null) throw new Error('the job has no list');
  render(
    <NumberLocale value="en-US">
      <MeasuresContext value={measuresOf(input.workshop)}>
        <InJob input={input}>
          <Told {...{ line, answer }} />
        </InJob>
      </MeasuresContext>
    </NumberLocale>,
  );
}

/** The folds about a list, open. */
function Told({ line, answer }: Readonly<{ line: Line; answer: BreaksAnswer }>) {
  const format = useListFormat(answer);
  return (
    <>
      <PriceRule {...{ line, answer, format }} index={0} piece="shirt" stale={false} />
      <PriceOrders {...{ answer, format }} pieces={37} onPieces={() => undefined} />
    </>
  );
}

const text = (words: string | RegExp) => expect(screen.getByText(words)).toBeInTheDocument();

describe('what is said of a price list', () => {
  it('tells each stretch with its amounts, and the tie', () => {
    show({ 'job.lines.0.ownPrices': own, 'job.lines.0.upCharging': 'averaged' });
    text('11 pieces would cost more than 12: 253.00 against 240.00 USD.');
    text('22 to 23 pieces would cost more than 24: 440.00 and 460.00 against 432.00 USD.');
    text('45 to 47 pieces would cost more than 48: 810.00 to 846.00 against 792.00 USD.');
    text('44 and 48 pieces cost the same: a tie, and no fault.');
  });

  it('tells sizes apart where their stretches differ', () => {
    show({ 'job.lines.0.ownPrices': own, 'job.lines.0.upCharges': [{ size: '3XL', amount: 30 }] });
    text('11 pieces would cost more than 12: 253.00 against 240.00 USD in S to 2XL.');
  });

  it('offers the ways out that lose no money, each with what it does for buyer and maker', () => {
    show({ 'job.lines.0.ownPrices': own, 'job.lines.0.upCharges': [] });
    for (const name of ['Cap orders at the next break', 'Sell by this tariff'])
      expect(screen.getByRole('button', { name })).toBeInTheDocument();
    // At 26.00 for one piece slabs would sell under full cost, and so would breaks that begin earlier.
    for (const name of ['Reckon by slabs', 'Move the breaks'])
      expect(screen.queryByRole('button', { name })).not.toBeInTheDocument();
    text(
      /^11 pieces of S to XL pay 240\.00 instead of 253\.00, 23 pay 432\.00 instead of 460\.00,? and 47 pay 792\.00 instead of 846\.00 USD\. At 47 it takes 5\d\.\d\d USD from your profit/,
    );
  });

  it('tells the falls in one line, and what the rule makes of each with the button that takes it', async () => {
    const input = clubWith({ ...asListed, 'job.lines.0.ownPrices': own });
    const answer = breaksAnswer(input, grid, { lineId: 'shirts', quantities: [] });
    if (answer === null) throw new Error('the job has no list');
    const context = { locale: 'en-US', currency: 'USD', units: input.workshop.units };
    const voice = { context, currency: 'USD', piece: { one: 'shirt', many: 'shirts' } };
    const { key, after } = pricesAnswer(answer.list, answer.staircase.falls, [], voice);
    expect(`${key}${after}`).toBe('Three falls: at 12, 24, and 48 a larger order costs less');
    const onTake = vi.fn();
    render(<PriceFalls stairs={answer.staircase} voice={voice} onTake={onTake} blockedBy={undefined} />);
    const rows = screen.getAllByRole('row').map(({ textContent }) => textContent);
    // 11 × 23 = 253 against 12 × 20; 23 × 20 = 460 against 24 × 18; 47 × 18 = 846 against 48 × 16.50.
    expect(rows).toEqual(['shirtsnowby the rule', '11253.00240.00', '23460.00432.00', '47846.00792.00']);
    text('It gives up 13.00, 28.00, and 54.00 on orders that few buyers place.');
    await userEvent.setup().click(screen.getByRole('button', { name: 'Use the rule' }));
    expect(onTake).toHaveBeenCalledOnce();
  });

  it('says that the test is passed under a rule, which rule, and what orders pay by it', () => {
    show({ 'job.lines.0.ownPrices': own, 'job.lines.0.selling': 'capped' });
    text('No total falls as the quantity rises, looked at from 1 to 2,000.');
    text('Orders are capped: none pays more than a larger one would.');
    const row = screen.getByRole('row', { name: /^11 / });
    expect(row).toHaveTextContent(/^11240\.0021\.82253\.00/);
  });

  it('writes the tariff with its error, the neighbours on the ending and the up-charges', () => {
    show({ 'job.lines.0.marketCeiling': 5 });
    text('131.81 USD to start and 12.70 USD a shirt');
    text(/On your ending of 0\.50 USD its neighbours are|takes 6\.\d\d USD out of your pocket/);
    text(/they ask for 2XL 2\.50 USD and 3XL 4\.00 USD more than S/);
    text(/each one sold costs you 1\.\d\d USD, and a discount is no answer/);
  });
});
