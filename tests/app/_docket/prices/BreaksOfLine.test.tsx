// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { cleanup, configure, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { BreaksOfLine } from '@/app/_docket/prices/BreaksOfLine';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
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

/** The usual breaks, sold as they stand unless a field says otherwise. */
function show(fields: Readonly<Record<string, unknown>>) {
  const input: JobInput = clubWith({
    'workshop.policy.breaks': [1, 6, 12, 24, 48],
    'job.lines.0.selling': 'asListed',
    ...fields,
  });
  const [line] = input.job.lines;
  const answer = breaksAnswer(input, grid, { lineId: 'shirts', quantities: [37] });
  if (line === undefined || answer === null) throw new Error('the job has no list');
  render(
    <NumberLocale value="en-US">
      <MeasuresContext value={measuresOf(input.workshop)}>
        <InJob input={input}>
          <BreaksOfLine
            {...{ line, answer }}
            index={0}
            stale={false}
            pieces={37}
            onPieces={() => undefined}
          />
        </InJob>
      </MeasuresContext>
    </NumberLocale>,
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

  it('offers the ways out that lose nothing, each with what it does for buyer and maker', () => {
    show({ 'job.lines.0.ownPrices': own, 'job.lines.0.upCharges': [] });
    for (const name of ['Cap orders at the next break', 'Sell by this tariff'])
      expect(screen.getByRole('button', { name })).toBeInTheDocument();
    // Under them one shirt at 26.00 would go on costing about 98.
    for (const name of ['Reckon by slabs', 'Soften the steps', 'Move the breaks'])
      expect(screen.queryByRole('button', { name })).not.toBeInTheDocument();
    text(
      /^11 pieces of S to XL pay 240\.00 instead of 253\.00, 23 pay 432\.00 instead of 460\.00,? and 47 pay 792\.00 instead of 846\.00 USD\. At 47 it takes 5\d\.\d\d USD from your profit/,
    );
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
