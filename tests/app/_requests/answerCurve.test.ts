import { describe, expect, it } from 'vitest';
import { answerCurve } from '@/app/_requests/answerCurve';
import { answerRequest } from '@/app/_requests/answerRequest';
import { club, clubWith, TODAY } from '@/tests/fixtures/clubJob';

const question = { from: 1, to: 40, priceEach: 20 } as const;

describe('answerCurve', () => {
  const answer = answerCurve(club(), TODAY, question);

  it('adds curve, tariff and inversions to the answer that it is without them', () => {
    expect(answer).toMatchObject(answerRequest(club(), TODAY));
    expect(answer.curve).toHaveLength(40);
    expect(answer.curve?.[36]).toMatchObject({ n: 37, fullCost: expect.closeTo(411.79, 2), price: 740 });
    expect(answer.curve?.[36]?.margin).toBeCloseTo(0.428, 3);
    expect(answer.tariff?.start).toBeCloseTo(131.8, 0);
    expect(answer.tariff?.each).toBeCloseTo(12.7, 2);
    // A suggested list never falls.
    expect(answer.inversions).toEqual([]);
  });

  it('tests the list as it is sold: own prices in place of suggestions, and as they stand', () => {
    const each = { 1: 26, 6: 23, 12: 20, 24: 18, 48: 16.5 };
    const ownPrices = Object.entries(each).map(([from, price]) => ({ from: Number(from), each: price }));
    const own = answerCurve(
      clubWith({
        'job.lines.0.ownPrices': ownPrices,
        'job.lines.0.selling': 'asListed',
        'workshop.policy.breaks': [1, 6, 12, 24, 48],
      }),
      TODAY,
      question,
    );
    expect(own.inversions?.filter(({ sizes }) => sizes.includes('S'))).toEqual([
      expect.objectContaining({ from: 11, to: 11, cheaperAt: 12 }),
      expect.objectContaining({ from: 22, to: 23, cheaperAt: 24 }),
      expect.objectContaining({ from: 45, to: 47, cheaperAt: 48 }),
    ]);
  });

  it('gives none of them while prices are withheld', () => {
    const stopped = answerCurve(clubWith({ 'job.lines.0.orderedQuantity': 36 }), TODAY, question);
    expect(stopped).toMatchObject({ kind: 'answered', curve: null, tariff: null, inversions: null });
  });

  it('gives them where only the asked price is too low: the curve is the way out', () => {
    const cheap = answerCurve(clubWith({ 'job.lines.0.askedPrice': 5 }), TODAY, question);
    expect(cheap.curve).toHaveLength(40);
  });

  it('says what cannot be read', () => {
    expect(answerCurve({ nonsense: true }, TODAY, question).kind).toBe('unusable');
  });
});
