import { describe, expect, it } from 'vitest';
import { channelsAnswer } from '@/lib/studies/channels/channelsAnswer';
import { clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

const of = (fields: Readonly<Record<string, unknown>> = {}) => {
  const answer = channelsAnswer(clubWith(fields), grid);
  if (answer === null) throw new Error('the job cannot be costed');
  return answer;
};
const way = (kind: string, answer = of()) => {
  const found = answer.ways.find((one) => one.kind === kind);
  if (found === undefined) throw new Error(`no ${kind}`);
  return found;
};

describe('the club order sold in four ways', () => {
  it('brings 711.50 to its maker by order, as it is asked, with its fees of half by card', () => {
    const own = way('order');
    expect(own).toMatchObject({ isJobs: true, channelId: 'own-orders' });
    expect(own.revenue).toBeCloseTo(711.5, 9);
    // 2.9 % of half of 761.305, and one fixed fee of 0.30.
    expect(own.fees).toBeCloseTo(0.029 * 0.5 * 761.305 + 0.3, 6);
    expect(own.profit).toBeCloseTo(711.5 - own.fullCost - own.fees, 9);
    expect(own.costToServe).toBeCloseTo(0, 9);
  });

  it('asks the last buyer the same without tax everywhere', () => {
    expect(of().retailEach).toBeCloseTo(711.5 / 37, 9);
    expect(way('stall').revenue).toBeCloseTo(711.5, 6);
    expect(way('consignment').revenue).toBeCloseTo(711.5, 6);
  });

  it('is half of it in wholesale, and a shelf keeps forty of a hundred, by customary terms', () => {
    expect(way('wholesale')).toMatchObject({ channelId: null, isCustomary: true, cashInDays: 30 });
    expect(way('wholesale').revenue).toBeCloseTo(711.5 / 2, 6);
    expect(way('consignment').fees).toBeCloseTo(0.4 * 711.5, 6);
  });

  it('costs seven minutes a piece to sell at a stall, until the maker says otherwise', () => {
    // 37 × 7 minutes at 18.00 and 4.20 an hour; a reprint is not sold again.
    expect(way('stall').costToServe).toBeCloseTo(((37 * 7) / 60) * 22.2, 6);
    const told = of({
      'workshop.channels.1.sellingMinutesPerPiece': {
        value: 2,
        unit: 'min',
        date: '2026-11-25',
        origin: 'yours',
      },
    });
    expect(way('stall', told).costToServe).toBeCloseTo(((37 * 2) / 60) * 22.2, 6);
  });

  it('says whether wholesale can be done: retail at least twice what it needs', () => {
    const { rule } = of();
    const shop = way('wholesale');
    expect(rule?.wholesale).toBeCloseTo((shop.fullCost + shop.fees) / 37 / 0.7, 6);
    expect(rule?.holds).toBe(false);
    expect(of({ 'job.lines.0.askedPrice': 60 }).rule?.holds).toBe(true);
  });
});
