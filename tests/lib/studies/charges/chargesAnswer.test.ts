import { describe, expect, it } from 'vitest';
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
