import { describe, expect, it } from 'vitest';
import { answerCurve } from '@/app/_edges/answerCurve';
import { answerRequest } from '@/app/_edges/answerRequest';
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
    // 9, 10 and 11 at the price of six cost more than twelve at 23.50.
    expect(answer.inversions).toContainEqual(
      expect.objectContaining({ lineId: 'shirts', from: 9, to: 11, cheaperAt: 12 }),
    );
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
