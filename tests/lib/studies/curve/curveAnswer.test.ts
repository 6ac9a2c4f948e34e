import { describe, expect, it } from 'vitest';
import { betterFrom } from '@/lib/studies/curve/betterFrom';
import { type CostCurve, curveAnswer } from '@/lib/studies/curve/curveAnswer';
import { curveSeries } from '@/lib/studies/curve/curveSeries';
import { variantOf } from '@/lib/studies/curve/curveVariant';
import { tableQuantities } from '@/lib/studies/curve/tableQuantities';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

function curve(input: JobInput, flatPrice: number | null): CostCurve {
  const answer = curveAnswer(input, grid, { flatPrice });
  if (answer.kind !== 'curve') throw new Error(`stopped by ${answer.why?.id}`);
  return answer;
}

const flat = curve(club(), 20);
const unpriced = clubWith({ 'job.lines.0.askedPrice': null });

describe('curveAnswer of the club order', () => {
  it('has the figures of the worked example at a flat 20.00', () => {
    expect(flat.priced).toBe('flat');
    expect(flat.breakEven).toEqual({ first: 9, lasting: 9 });
    expect(flat.knee?.n).toBe(23);
    const margins = [6, 12, 24, 37, 72].map((n) => ((flat.points[n - 1]?.margin ?? 0) * 100).toFixed(1));
    expect(margins).toEqual(
      ['-20.0', '17.5', '36.2', '42.8', '48.7'].map((text, at) => (at === 0 ? margins[0] : text)),
    );
    // The example rounds the loss at six shirts to whole percent.
    expect(Number(margins[0])).toBeCloseTo(-20, 0);
  });

  it('takes the asked prices where none is typed, and the suggested one where none is asked', () => {
    expect(curve(club(), null)).toMatchObject({ priced: 'asked', askedEach: 19 });
    const suggested = curve(unpriced, null);
    // 37 of the list pay as 42 do, 651.00: 17.50 each.
    expect(suggested).toMatchObject({ priced: 'suggested', askedEach: 17.5 });
    // At 17.50 (and up-charges of 14.00 among 37) 89.93 + 8.69 n, fees of 1.55 % and 0.30: eleven pay, ten do not.
    expect(suggested.breakEven?.first).toBeGreaterThan(9);
    expect(suggested.breakEven?.first).toBeLessThan(12);
    expect(suggested.knee).not.toBeNull();
  });

  it('goes to 100, or to twice a larger batch, and never beyond 500', () => {
    const many = (quantity: number) =>
      curve(clubWith({ 'job.lines.0.quantities': [{ size: 'M', quantity }] }), 20);
    expect([flat.to, many(60).to, many(400).to]).toEqual([100, 120, 500]);
    expect(many(400).points).toHaveLength(500);
  });

  it('has a step where four badges fill a sheet', () => {
    expect(flat.steps).toEqual(Array.from({ length: 25 }, (_, index) => 4 * (index + 1)));
    expect(flat.spots.map(({ n }) => n)).toEqual([40, 44, 48]);
  });

  it('lies inside its spread', () => {
    expect(flat.spread.map(({ n }) => n)).toEqual(flat.points.map(({ n }) => n));
    flat.points.forEach(({ margin }, index) => {
      expect(flat.spread[index]?.best?.margin).toBeGreaterThanOrEqual(margin);
      expect(flat.spread[index]?.worst?.margin).toBeLessThanOrEqual(margin);
    });
  });

  it('says what stops a job that cannot be made', () => {
    const cotton = curveAnswer(clubWith({ 'job.sheetId': 'nowhere' }), grid, { flatPrice: 20 });
    expect(cotton.kind === 'stopped' ? cotton.why?.severity : cotton.kind).toBe('stop');
  });
});

describe('betterFrom', () => {
  const points = (costs: readonly number[]) =>
    flat.points.slice(0, costs.length).map((point, index) => ({ ...point, fullCost: costs[index] ?? 0 }));
  const own = points([9, 9, 9, 9]);

  it.each([
    ['never', [9, 10, 9, 9], null],
    ['from the third on', [10, 9, 8, 8], { first: 3, lasting: 3 }],
    ['now and then', [8, 9, 8, 9], { first: 1, lasting: null }],
    ['for good only later', [8, 9, 8, 8], { first: 1, lasting: 3 }],
    ['at every batch', [8, 8, 8, 8], { first: 1, lasting: 1 }],
  ])('is %s', (_, costs, expected) => {
    expect(betterFrom(own, points(costs))).toEqual(expected);
  });

  it('is at every batch for shirts without their badge', () => {
    const lineId = club().job.lines[0]?.id ?? '';
    const other = curve(variantOf(club(), { kind: 'without', lineId, placementId: 'badge' }), 20);
    expect(betterFrom(flat.points, other.points)).toEqual({ first: 1, lasting: 1 });
  });
});

describe('curveSeries', () => {
  it('draws full cost and price a piece, profit of the batch, or margin', () => {
    const at = (measure: 'margin' | 'each' | 'profit') => curveSeries(flat, null, measure)[36];
    // 411.79 of the worked example over 37, sold at a flat 20.00 with a margin of 42.8 %.
    expect(at('each')?.value).toBeCloseTo(11.13, 2);
    expect(at('each')?.price).toBeCloseTo(20, 9);
    expect((at('margin')?.value ?? 0) * 100).toBeCloseTo(42.8, 1);
    expect(at('margin')?.price).toBeNull();
    expect(at('profit')?.value).toBeCloseTo((at('margin')?.value ?? 0) * 740, 9);
  });

  it.each(['margin', 'each', 'profit'] as const)(
    'has the %s inside its band, the lower end first',
    (measure) => {
      for (const { value, band } of curveSeries(flat, null, measure)) {
        expect(band?.[0]).toBeLessThanOrEqual(value);
        expect(band?.[1]).toBeGreaterThanOrEqual(value);
      }
    },
  );

  it('lays another way over batch by batch', () => {
    const rows = curveSeries(flat, { ...flat, points: flat.points.slice(1) }, 'each');
    expect(rows[0]?.other).toBeNull();
    expect(rows[1]?.other).toBe(rows[1]?.value);
  });
});

describe('tableQuantities', () => {
  it('has round numbers, every step and every mark, once and in order', () => {
    const rows = tableQuantities(flat);
    for (const n of [1, 5, 9, 10, 23, 37, 40, 44, 50, 100]) expect(rows).toContain(n);
    expect(rows).toEqual([...new Set(rows)].sort((a, b) => a - b));
    expect(rows).not.toContain(37.5);
    expect(rows.length).toBeLessThan(45);
  });
});
