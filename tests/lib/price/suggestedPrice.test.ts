import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { clubWith, mugsWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

/** The club’s shirts with no price decided and breaks as they were typed before the sums chose them. */
const suggestion = (fields: Readonly<Record<string, unknown>>) =>
  priceJob(
    clubWith({
      'job.lines.0.askedPrice': null,
      // More than 40 pieces keep the press longer than its Saturday, which is another story.
      'job.wantedOn': null,
      'workshop.policy.breaks': [1, 6, 12, 24, 48],
      ...fields,
    }),
    grid,
  ).prices?.suggested[0]?.each;
const pieces = (quantity: number) => ({ 'job.lines.0.quantities': [{ size: 'M', quantity }] });

// Of the list at those breaks: 144.50, 34.50, 23.50, 18.00 and 15.50 a shirt.
describe('the price suggested for a job', () => {
  it('is the price of its break where no larger order holds the order down', () => {
    expect(suggestion(pieces(37))).toBe(1800);
    expect(suggestion(pieces(48))).toBe(1550);
  });

  it.each([
    // 3 pay 6 × 34.50 = 207.00, 69.00 each.
    [3, 6900],
    // 23 pay 24 × 18.00 = 432.00: 18.78 each, 18.50 on the ending.
    [23, 1850],
    // 44 pay 48 × 15.50 = 744.00: 16.91 each.
    [44, 1650],
  ])('lets %d pieces pay no more than the order that holds them down', (n, each) => {
    expect(suggestion(pieces(n))).toBe(each);
  });

  it('takes the breaks that the sums choose as they are sold: 37 pay 42 × 15.50 = 651.00', () => {
    // 17.59 each, 17.50 on the ending; the price of the break is 19.00.
    expect(suggestion({ 'workshop.policy.breaks': null })).toBe(1750);
  });

  it('is never below the target lifted to the ending', () => {
    // 24 × 18.00 = 432.00 is 19.64 for each of 22, 18.00 on an ending of 2; but 22 need 131.81 + 22 × 12.33 (12.70
    // less what 2XL and 3XL add to the mix), 18.32 each.
    const breaks = { 'workshop.policy.breaks': [1, 24], 'workshop.policy.priceStep': 2 };
    expect(suggestion({ ...pieces(22), ...breaks })).toBe(2000);
  });

  it('is the piece beside the start where the set-up is apart', () => {
    // 132.00 to start and 12.50 each, which is what the list prints.
    expect(suggestion({ 'job.lines.0.selling': 'setUpApart' })).toBe(1250);
  });

  it('shares what dearer slabs bring among all pieces', () => {
    // 5 × 144.50 + 6 × 34.50 + 12 × 23.50 + 14 × 18.00 = 1,463.50, 39.55 each.
    expect(suggestion({ 'job.lines.0.selling': 'slab' })).toBe(3950);
  });

  it('is the piece price of a list that is sold as it stands', () => {
    expect(suggestion({ ...pieces(23), 'job.lines.0.selling': 'asListed' })).toBe(2350);
  });

  it('is no less than the target for an order below the first break', () => {
    // 6 need 131.81 ÷ 6 + 12.70 = 34.67, 35.00 at the most and not the 18.00 of the list.
    const few = suggestion({ ...pieces(6), 'workshop.policy.breaks': [24, 48] });
    expect(few).toBeGreaterThanOrEqual(3450);
    expect(few).toBeLessThanOrEqual(3500);
  });

  it('stays the maker’s own where one is typed for the break, also under the target', () => {
    const own = { 'job.lines.0.ownPrices': [{ from: 24, each: 14 }] };
    expect(suggestion({ ...pieces(37), ...own })).toBe(1400);
  });

  it('is the one price of a size made to stock', () => {
    const { prices } = priceJob(mugsWith({ 'job.lines.0.askedPrice': null }), grid);
    expect(prices?.lists[0]?.rule).toBe('onePrice');
    expect(prices?.suggested[0]?.each).toBe(prices?.lists[0]?.breaks[0]?.each);
    expect(prices?.offer.lines[0]).toMatchObject({ each: prices?.suggested[0]?.each, isDecided: false });
  });

  it('has what each size adds beside it, and all of it in the offer', () => {
    const { prices } = priceJob(clubWith({ 'job.lines.0.askedPrice': null }), grid);
    expect(prices?.suggested[0]?.sizes.filter(({ more }) => more > 0)).toEqual([
      { size: '2XL', more: 250 },
      { size: '3XL', more: 400 },
    ]);
    // 37 × 17.50, 4 × 2.50 and 1 × 4.00.
    expect(prices?.offer.total?.without).toBe(66_150);
  });
});
