import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { chargesAnswer } from '@/lib/studies/charges/chargesAnswer';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

const of = (fields: Readonly<Record<string, unknown>> = {}) => {
  const answer = chargesAnswer(clubWith(fields), grid);
  if (answer === null) throw new Error('the job cannot be costed');
  return answer;
};
const one = (id: string, answer = of()) => answer.charges.find((charge) => charge.id === id);

describe('charges around the pieces of a job', () => {
  it('are the least order, each design, a sample, further prints, names, minutes and delivery', () => {
    expect(of().charges.map(({ id }) => id)).toEqual([
      'minimumOrder',
      'design',
      'design',
      'sample',
      'placement',
      'placement',
      'name',
      'fold',
      'split',
      'change',
      'delivery',
    ]);
  });

  it('stand on the minutes of the workshop, at pay and overhead of 22.20 an hour', () => {
    expect(one('fold')?.cost).toBeCloseTo((0.5 / 60) * 22.2, 9);
    expect(one('split')?.cost).toBeCloseTo((15 / 60) * 22.2, 9);
    const slower = of({ 'workshop.policy.charges.splitMinutes': 60 });
    expect(one('split', slower)?.cost).toBeCloseTo(22.2, 9);
    const least = of({ 'workshop.policy.charges.changeAtLeast': 40 });
    expect(one('change', least)?.written).toBe(4000);
  });

  it('has the delivery of an order that is brought: 30 minutes at 22.20 an hour and 12 miles at 0.60', () => {
    expect(one('delivery')?.cost).toBeCloseTo(11.1 + 7.2, 9);
    // 18.30 at 30 % margin and fees of 1.5515 %: 26.74, lifted to the next half.
    expect(one('delivery')?.written).toBe(2700);
    expect(one('delivery', of({ 'job.deliveryKm': null }))).toBeUndefined();
  });

  it('say which of them the price bears already, and what it would be without', () => {
    const borne = (id: string) => of().charges.flatMap((charge) => (charge.id === id ? [charge.borne] : []));
    for (const id of ['minimumOrder', 'sample', 'name', 'fold', 'split', 'change'])
      expect(borne(id)).toEqual([{ kind: 'apart' }]);
    // 602.05 ÷ 37 = 16.27; 18.30 of delivery over 0.684485 are 26.74, and 575.31 ÷ 37 = 15.55.
    const [delivery] = borne('delivery');
    expect(delivery).toMatchObject({ kind: 'inPrice', per: 'piece' });
    if (delivery?.kind !== 'inPrice') throw new Error('the delivery is not in the price');
    expect(delivery.withIt).toBeCloseTo(16.27, 2);
    expect(delivery.withoutIt).toBeCloseTo(15.55, 2);
    // Preparing and testing both designs costs 14.40 + 5.55 = 19.95, all of it in the price: 29.14 ÷ 37 = 0.79.
    const designs = borne('design').map((one) => (one.kind === 'inPrice' ? one.withIt - one.withoutIt : 0));
    expect(designs[0] ?? 0).toBeCloseTo(14.4 / 0.684485 / 37, 2);
    expect((designs[0] ?? 0) + (designs[1] ?? 0)).toBeCloseTo(0.79, 2);
  });

  it('the price without delivery is what the job costs once nothing is delivered', () => {
    const priced = priceJob(clubWith({ 'job.deliveryKm': null }), grid).prices;
    const borne = one('delivery')?.borne;
    expect(borne?.kind === 'inPrice' ? borne.withoutIt * 37 : null).toBeCloseTo(priced?.targetTotal ?? 0, 6);
  });

  it('of a job of several lines are held against the whole order', () => {
    const { job } = club();
    const [line] = job.lines;
    const placements = line?.placements.map((one) => ({ ...one, id: `more-${one.id}` }));
    const two = of({ 'job.lines': [line, { ...line, id: 'more', name: 'More shirts', placements }] });
    expect(one('delivery', two)?.borne).toMatchObject({ kind: 'inPrice', per: 'order' });
    expect(two.charges.filter(({ id }) => id === 'sample')).toHaveLength(2);
  });

  it('one piece has one price: the least order is not asked beside a list that pays it', () => {
    // The list begins with one piece at its own target, about 144 in S: more than the 101.00 of a least order.
    expect(one('minimumOrder')).toMatchObject({ paidByList: { from: 1, total: 14_450 }, written: 10_100 });
    // At 26.00 a piece it does not pay: the charge covers three pieces, 78.00, and not four, 104.00.
    const cheap = of({ 'job.lines.0.ownPrices': [{ from: 1, each: 26 }] });
    expect(one('minimumOrder', cheap)).toMatchObject({ paidByList: null, covers: 3 });
    expect(one('sample')?.written).toBe(3850);
  });

  it('ask for a profit on the least order', () => {
    const [bare, asked] = [
      one('minimumOrder'),
      one('minimumOrder', of({ 'workshop.policy.charges.minimumProfit': 25 })),
    ];
    // 25.00 over what a half-paid card leaves of it, lifted to the next half.
    expect((asked?.written ?? 0) - (bare?.written ?? 0)).toBeGreaterThanOrEqual(2500);
    expect((asked?.written ?? 0) - (bare?.written ?? 0)).toBeLessThanOrEqual(2600);
  });

  it('bear a share for rush by how much of the usual days is left, and none where no hours are', () => {
    // The club wants its shirts in twelve working days.
    const rush = (days: number, more: Readonly<Record<string, unknown>> = {}) =>
      of({ 'workshop.policy.charges.normalWorkingDays': days, ...more }).rush;
    expect(rush(10)).toMatchObject({ outcome: { kind: 'none' }, wantedDays: 12 });
    expect(rush(13)?.outcome).toEqual({ kind: 'rush', share: 0.2 });
    expect(rush(25)?.outcome).toEqual({ kind: 'rush', share: 0.5 });
    expect(rush(25, { 'workshop.policy.charges.rushShares.underHalf': 0.35 })?.outcome).toEqual({
      kind: 'rush',
      share: 0.35,
    });
    expect(of({ 'job.wantedOn': null }).rush).toBeNull();
  });

  it('are nothing to be asked for while a stop stands', () => {
    expect(chargesAnswer(clubWith({ 'job.lines.0.placements.0.mirror': false }), grid)).toBeNull();
    expect(chargesAnswer(club(), grid)).not.toBeNull();
  });
});
