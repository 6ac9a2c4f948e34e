// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { FairsCompared } from '@/app/_evening/slips/FairsCompared';
import { SellThrough } from '@/app/_evening/slips/SellThrough';
import { formatterFor } from '@/app/_words/formatter';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import type { EveningAnswers } from '@/lib/stall/evening/eveningAnswers';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { goodsOf } from '@/tests/fixtures/stallTaps';
import { dayOf, fairAnswers, fairEvening } from '@/tests/lib/stall/evening/fairEvening';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

afterEach(cleanup);

const { units } = exampleWorkshop(TEST_DAY);
const formatter = formatterFor({ locale: 'en-US', currency: 'USD', units });
/** The tin is right and all goods are there. */
const settled: EveningAnswers = { ...fairAnswers, cash: { ...fairAnswers.cash, counted: 53_200 } };

const rowsOf = (table: HTMLElement) =>
  within(table)
    .getAllByRole('row')
    .map((row) => [...row.querySelectorAll('th, td')].map(({ textContent }) => textContent?.trim() ?? ''));

describe('what an hour brought, beside other fairs', () => {
  const past = (name: string, payPerHour: number | null): PastDay => ({
    ...{ stallDayId: name, name, day: TEST_DAY, sellingHours: 7, payPerHour, takings: 900, stallFee: 50 },
    ...{ currency: 'USD', weather: null, wanted: [], expected: null },
  });
  const show = (others: readonly PastDay[], evening = fairEvening(settled)) =>
    render(<FairsCompared on={{ evening, past: others, formatter }} />);
  /** Of each fair how long its bar is and where the wage stands, of 100. */
  const bars = () =>
    [...document.querySelectorAll('svg')].map((svg) => [
      Number(svg.querySelector('rect')?.getAttribute('width')),
      Number(/^M([-\d.]+) 0V10$/.exec(svg.querySelector('path')?.getAttribute('d') ?? '')?.[1]),
    ]);

  it('is told of this one first, then of those whose pay is known, each with its bar and the wage', () => {
    show([past('Summer Fair', 50), past('Night market', null), past('Autumn Fair', 9)]);
    const table = screen.getByRole('table', { name: 'USD an hour; wage wanted, 18' });
    // 485.95 of profit and 18.00 for each of 11.5 and 12.67 hours: 920.99 ÷ 24.17 = 38.105.
    expect(rowsOf(table)).toEqual([
      ['Exampleton Spring Fair', '', '38'],
      ['Summer Fair', '', '50'],
      ['Autumn Fair', '', '9'],
    ]);
    // 50 is the whole bar, so that 18 stand at 36, 9 at 18 and 38.105 at 76.21.
    expect(bars()).toEqual([
      [expect.closeTo(76.21, 1), 36],
      [100, 36],
      [18, 36],
    ]);
  });

  it('is told where it was less than nothing, by no bar to speak of', () => {
    show([past('Wet Fair', -20.4)]);
    expect(rowsOf(screen.getByRole('table'))[1]).toEqual(['Wet Fair', '', '−20']);
    const [, lost] = bars();
    expect(lost?.[0]).toBe(0.6);
  });

  it('is measured by the wage where every fair lost', () => {
    const plan = { ...fairPlan, costs: { ...fairPlan.costs, cash: 1500 } };
    show([past('Wet Fair', -20.4)], fairEvening(settled, plan));
    expect(bars()).toEqual([
      [0.6, 100],
      [0.6, 100],
    ]);
  });

  it('names no more than five others', () => {
    show(Array.from({ length: 7 }, (_, at) => past(`Fair ${at + 1}`, 20)));
    expect(rowsOf(screen.getByRole('table')).map(([name]) => name)).toEqual([
      'Exampleton Spring Fair',
      ...['Fair 1', 'Fair 2', 'Fair 3', 'Fair 4', 'Fair 5'],
    ]);
  });

  it('waits for what this one brought', () => {
    const goods = fairPlan.goods.map((one) => ({ ...one, cost: null }));
    show([past('Summer Fair', 50)], fairEvening(settled, { ...fairPlan, goods }));
    expect(screen.queryByRole('table')).toBeNull();
  });
});

describe('how much of each design went', () => {
  it('is what was brought, sold and left, and its share', () => {
    render(<SellThrough evening={fairEvening(settled)} formatter={formatter} />);
    expect(rowsOf(screen.getByRole('table'))).toEqual([
      ['Design', 'brought', 'sold', 'left', 'sold through'],
      // 17 of 30 are 56.7, 14 of 24 58.3, 6 of 16 37.5 and 20 of 36 55.6 of 100.
      ['Fern', '30', '17', '13', '57 %'],
      ['Lighthouse', '26', '13', '13', '50 %'],
      ['Otter', '24', '14', '10', '58 %'],
      ['Star Map', '16', '6', '10', '38 %'],
      ['Mugs', '36', '20', '16', '56 %'],
    ]);
    const widths = [...document.querySelectorAll('rect')].map((rect) => Number(rect.getAttribute('width')));
    expect(widths[1]).toBe(50);
  });

  it('is without seconds kept from before, which lie beside those that were brought', () => {
    // Nine Fern L and five old seconds: four and all five were sold.
    const goods = fairPlan.goods.flatMap((one) =>
      one.lineId === 'fern' && one.size === 'L' ? [{ ...one, seconds: 5 }] : [],
    );
    const [fernL] = goods;
    if (fernL === undefined) throw new Error('the fair has no Fern L');
    const sale = { what: 'sale', goods: goodsOf(fernL), pay: 'cash', minor: 2800 } as const;
    const taps = Array.from({ length: 9 }, (_, at) =>
      at < 4 ? sale : { ...sale, minor: 1400, isSecond: true as const },
    );
    const evening = dayOf(taps, { answers: settled, plan: { ...fairPlan, secondsShare: 0.5, goods } });
    render(<SellThrough evening={evening} formatter={formatter} />);
    // 4 of 9 are 44.4 of 100.
    expect(rowsOf(screen.getByRole('table'))[1]).toEqual(['Fern', '9', '4', '5', '44 %']);
  });

  it('is not known of a fair nobody tapped until it was counted', () => {
    const answers = { ...settled, stock: { ...settled.stock, isRestAsReckoned: false } };
    render(<SellThrough evening={fairEvening(answers, fairPlan, [])} formatter={formatter} />);
    expect(rowsOf(screen.getByRole('table'))[1]).toEqual(['Fern', '30', '–', '–', '']);
    expect(document.querySelectorAll('rect')).toHaveLength(0);
  });

  it('has no share where none was brought', () => {
    const goods = fairPlan.goods.map((one) => (one.lineId === 'lighthouse' ? { ...one, bring: 0 } : one));
    const evening = fairEvening(settled, { ...fairPlan, goods });
    render(<SellThrough evening={evening} formatter={formatter} />);
    expect(rowsOf(screen.getByRole('table'))[2]?.[4]).toBe('');
  });
});
