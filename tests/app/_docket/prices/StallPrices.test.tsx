// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { cleanup, configure, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { JobPriceBar } from '@/app/_docket/head/JobPriceBar';
import { AskedRemark } from '@/app/_docket/prices/AskedRemark';
import { PriceCards } from '@/app/_docket/prices/PriceCards';
import { PricesSection } from '@/app/_docket/prices/PricesSection';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { sectionStates } from '@/app/_words/docket/sectionStates';
import { priceJob } from '@/lib/costing/priceJob';
import { fairShirts } from '@/lib/examples/fairJobs';
import { askedAgainstList } from '@/lib/price/list/askedAgainstList';
import { breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import type { JobInput } from '@/shared/schemas/request';
import { changed, clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { InJob, pricedNow } from '../inJob';

configure({ defaultHidden: true });
afterEach(cleanup);

/** The shirts of the spring fair, 28.00 each, 31.00 from 2XL; their list suggests less than half of it. */
const stall = (fields: Parameters<typeof changed>[1] = {}): JobInput => changed(fairShirts(TODAY), fields);

const show = (input: JobInput, part: React.ReactNode) =>
  render(
    <NumberLocale value="en-US">
      <MeasuresContext value={measuresOf(input.workshop)}>
        <InJob input={input} priced={pricedNow(input)}>
          {part}
        </InJob>
      </MeasuresContext>
    </NumberLocale>,
  );

const contextOf = (input: JobInput) => ({
  locale: 'en-US',
  currency: input.workshop.currency,
  units: input.workshop.units,
});

function pricedOf(input: JobInput) {
  const { prices, costSheet } = priceJob(input, grid);
  const [line] = input.job.lines;
  const answer = breaksAnswer(input, grid, { lineId: line?.id ?? '', quantities: [] });
  if (prices === null || costSheet === null || line === undefined || answer === null)
    throw new Error('the job has no prices');
  return { prices, costSheet, line, answer };
}

describe('the prices of a stall job', () => {
  it('are those it asks, beside what its list would ask', () => {
    show(stall(), <PricesSection />);
    expect(screen.getByText('28.00 a shirt').closest('p')).toHaveTextContent('28.00 a shirt, 31.00 from 2XL');
    expect(screen.getByText(/^This job asks 28\.00, \d+\.\d\d over the list/)).toBeInTheDocument();
    expect(screen.getByRole('button', { name: /^Ask \d+\.\d\d$/ })).toBeInTheDocument();
  });

  it('have neighbours on the ending, of which the price itself leaves what the head says', () => {
    const input = stall();
    const { prices, answer } = pricedOf(input);
    const { neighbours } = answer;
    const { priceStep } = input.workshop.policy;
    expect([neighbours?.below?.price, neighbours?.each, neighbours?.above?.price]).toEqual([
      2800 - priceStep * 100,
      2800,
      2800 + priceStep * 100,
    ]);
    const [below, above] = [neighbours?.below?.margin ?? 1, neighbours?.above?.margin ?? 0];
    expect(below).toBeLessThan(prices.margin);
    expect(above).toBeGreaterThan(prices.margin);
    const voice = { context: contextOf(input), currency: 'USD', piece: { one: 'shirt', many: 'shirts' } };
    const offered = prices.offer.lines[0]?.sizes ?? [];
    render(<PriceCards {...{ offered, neighbours, voice }} whole={prices.offer} taxSaid="tax added later" />);
    const stands = screen.getAllByRole('listitem', { current: true }).map(({ textContent }) => textContent);
    const percent = new Intl.NumberFormat('en-US', { maximumFractionDigits: 1 }).format(prices.margin * 100);
    expect(stands[0]).toContain(`28.00leaves ${percent} %pays `);
    expect(stands[1]).toMatch(/^31\.00leaves/);
  });

  it('stand in the index as they are asked, else as they are suggested', () => {
    const textOf = (input: JobInput) => {
      const { prices, costSheet } = pricedOf(input);
      const state = { input, isChecked: true, checks: [], questions: 0, costSheet, prices };
      return sectionStates(state, contextOf(input)).prices.text;
    };
    expect(textOf(stall())).toBe('28.00 a shirt');
    const open = stall({ 'job.lines.0.askedPrice': null });
    const [suggested] = pricedOf(open).prices.suggested;
    expect(textOf(open)).toBe(`${((suggested?.each ?? 0) / 100).toFixed(2)} a shirt`);
  });

  it('ask what a stall day costs while nobody has said it, and no longer', () => {
    const at = stall().workshop.channels.findIndex(({ id }) => id === stall().job.channelId);
    const without = stall({
      [`workshop.channels.${at}.dayCost`]: null,
      [`workshop.channels.${at}.dayPieces`]: null,
    });
    const { unmount } = show(without, <PricesSection />);
    expect(screen.getByText(/^What a stall day costs is not counted:/)).toBeInTheDocument();
    expect(screen.getByRole('link', { name: 'type it' })).toHaveAttribute(
      'href',
      expect.stringMatching(/^\/workshop#.*dayCost/),
    );
    unmount();
    const rate = (value: number, unit: string) => ({ value, unit, date: TODAY, origin: 'yours' });
    const said = stall({
      [`workshop.channels.${at}.dayCost`]: rate(140, 'money'),
      [`workshop.channels.${at}.dayPieces`]: rate(70, 'pieces'),
    });
    show(said, <PricesSection />);
    expect(screen.queryByText(/^What a stall day costs is not counted/)).not.toBeInTheDocument();
  });
});

describe('what a job asks beside its list', () => {
  const remarkOf = (input: JobInput) => {
    const { prices, line } = pricedOf(input);
    const [list] = prices.lists;
    const [suggested] = prices.suggested;
    if (list === undefined || suggested === undefined) throw new Error('the job has no list');
    const n = prices.offer.pieces;
    const asked = askedAgainstList(line, list, { n, listEach: suggested.each }, 'USD');
    if (asked === null) throw new Error('the list has no price for it');
    const voice = { context: contextOf(input), currency: 'USD', piece: { one: 'shirt', many: 'shirts' } };
    show(
      input,
      <ul>
        <AskedRemark isOneOfSeveral={false} {...{ line, asked, suggested, voice }} />
      </ul>,
    );
    return { text: screen.queryByRole('listitem')?.textContent ?? null, prices };
  };

  it('is not said again where nothing is asked and the head suggests the same', () => {
    expect(remarkOf(stall({ 'job.lines.0.askedPrice': null })).text).toBeNull();
  });

  it('names what sizes add by it and by the list', () => {
    const { text } = remarkOf(
      clubWith({
        'job.lines.0.selling': 'onePrice',
        'job.lines.0.upCharges': [{ size: '2XL', amount: 1.5 }],
      }),
    );
    expect(text).toMatch(/; 2XL \+1\.50 against \+\d\.\d\d/);
  });

  it('comes to the total of the head, what sizes add included', () => {
    const held = clubWith({
      'job.wantedOn': null,
      'job.lines.0.breaks': [1, 6, 12, 24, 48],
      'job.lines.0.quantities': [
        { size: 'L', quantity: 40 },
        { size: '2XL', quantity: 5 },
      ],
    });
    const { text, prices } = remarkOf(held);
    const total = ((prices.offer.total?.without ?? 0) / 100).toLocaleString('en-US', {
      minimumFractionDigits: 2,
    });
    expect(text).toContain('as 48 do, what sizes add included');
    expect(text).toContain(`This job asks 19.00 each, ${total} in all`);
  });
});

describe('a price that does not pay its own bills', () => {
  const one = clubWith({ 'job.lines.0.quantities': [{ size: 'L', quantity: 1 }] });

  it('is dashed, says what is wrong and offers both ways on, and is not withheld', () => {
    show(one, <JobPriceBar />);
    const bar = screen.getByRole('region', { name: 'Price' });
    expect(bar.querySelector('[data-dashed]')).not.toBeNull();
    expect(bar).toHaveTextContent(/at 19\.00 USD a piece is below the \d+\.\d\d USD that only pay the bills/);
    expect(screen.getByRole('button', { name: 'Ask 144.50 USD' })).toBeInTheDocument();
    expect(screen.getByRole('link', { name: 'Go on in spite of it' })).toHaveAttribute('href', '#checks');
    expect(bar.querySelector('[data-figure="price"]')).toHaveTextContent('19.00');
  });

  it('is neither where the price pays them', () => {
    show(clubWith({}), <JobPriceBar />);
    const bar = screen.getByRole('region', { name: 'Price' });
    expect(bar.querySelector('[data-dashed]')).toBeNull();
    expect(screen.queryByRole('link', { name: 'Go on in spite of it' })).not.toBeInTheDocument();
  });
});
