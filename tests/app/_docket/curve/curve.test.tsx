// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { type ComponentProps, createRef, useState } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { CurveView } from '@/app/_docket/curve/CurveView';
import { curveMarks } from '@/app/_docket/curve/curveMarks';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { curveAnswerWords, soldWords } from '@/app/_words/docket/curveWords';
import { taxTerms } from '@/lib/price/taxTerms';
import { type CostCurve, curveAnswer } from '@/lib/studies/curve/curveAnswer';
import { curveSeries } from '@/lib/studies/curve/curveSeries';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

afterEach(cleanup);

const input = club();
const context = { locale: 'en-US', currency: 'USD', units: input.workshop.units };
const shirt = { one: 'shirt', many: 'shirts' };

function curveOf(of: JobInput, flatPrice: number | null = null): CostCurve {
  const answer = curveAnswer(of, grid, { flatPrice });
  if (answer.kind !== 'curve') throw new Error('the job has no curve');
  return answer;
}

const study = curveOf(input);
const said = (of: CostCurve, n: number | null = null) => {
  const point = of.points.find((one) => one.n === n) ?? null;
  const { before = '', key, after = '' } = curveAnswerWords(of, point, shirt, context);
  return `${before}${key}${after}`;
};

describe('the answer of the batch', () => {
  it('says from when it pays its way and where most of the margin is won, at the prices asked', () => {
    expect(said(study)).toBe('Pays its way from 9; most of the margin is won by 24');
  });

  it('says what the batch that is looked at leaves and pays', () => {
    // 230.76 − 193.97 for twelve at 19.00 with up-charges: 14.2 %, and 25.28 an hour.
    expect(said(study, 12)).toBe('12 shirts leave 14 % and pay 25.28 an hour');
  });

  it('says that no order pays its way where none does', () => {
    expect(said(curveOf(input, 3))).toBe('No order up to 100 pays its way: ask more, or make it cost less');
  });

  it('is drawn at the suggested price while none is asked, and says so', () => {
    const open = curveOf(clubWith({ 'job.lines.0.askedPrice': null }));
    expect(said(open)).toMatch(/^Pays its way from (10|11); most of the margin is won by \d+$/);
    expect(soldWords(open, null, context)).toBe('at 17.50, suggested');
  });
});

describe('the marks of the batch', () => {
  const marks = (looked: number) =>
    curveMarks(study, 'margin', looked, (value) => `${(value * 100).toFixed(1)} %`).map(({ words }) => words);

  it('are three at rest: where it pays its way, the knee and this job', () => {
    expect(marks(37)).toEqual(['knee, 24', 'pays its way from 9', 'this job, 37: 40.5 %']);
  });

  it('keep this job in sight while another batch is looked at', () => {
    expect(marks(12)).toEqual(['this job, 37', 'knee, 24', 'pays its way from 9', '12: 14.2 %']);
  });
});

describe('the money of the curve', () => {
  it('is the money the maker writes, cost and price alike', () => {
    const stall = clubWith({ 'workshop.channels.0.taxMode': 'inside' });
    const inside = curveOf(stall);
    expect(inside.taxInside).toBeGreaterThan(0);
    const [row] = curveSeries(inside, null, 'each');
    const [first] = inside.points;
    expect(row?.value).toBeCloseTo((first?.fullCost ?? 0) * (1 + inside.taxInside), 9);
    expect(row?.price).toBeCloseTo((first?.price ?? 0) * (1 + inside.taxInside), 9);
  });
});

const onMake = vi.fn();
function Shown() {
  const [looked, setLooked] = useState(37);
  const props: ComponentProps<typeof CurveView> = {
    study,
    other: null,
    otherName: null,
    hasBand: false,
    measure: 'margin',
    title: 'Margin against batch size, at the asked prices',
    sold: 'at 19.00',
    piece: shirt,
    terms: taxTerms(costed(input).sheet),
    asked: 37,
    looked,
    onLook: setLooked,
    onMake: () => onMake(looked),
    onBack: () => setLooked(37),
    whole: createRef(),
    hold: createRef(),
    blockedBy: undefined,
  };
  return (
    <NumberLocale value="en-US">
      <MeasuresContext value={measuresOf(input.workshop)}>
        <CurveView {...props} />
      </MeasuresContext>
    </NumberLocale>
  );
}

describe('the curve on the page', () => {
  const columns = () =>
    screen.getAllByRole('row').map((row) => [...row.children].map((cell) => cell.textContent ?? ''));

  it('stands beside the figures of this job, which carry what they are', () => {
    render(<Shown />);
    expect(columns()).toEqual([
      ['', '37 shirts at 19.00'],
      ['a shirt costs', '11.13'],
      ['order total', '711.50'],
      ['margin', '40.5 %'],
      ['profit', '288.37'],
      ['pays you an hour', '56.26'],
    ]);
    expect(screen.getByText('40.5 %')).toHaveAttribute('data-figure', 'margin');
    expect(screen.getByText('56.26')).toHaveAttribute('data-figure', 'pay');
    expect(screen.queryByRole('button')).not.toBeInTheDocument();
  });

  it('looks at another quantity by the arrow keys, and makes it so or goes back on a press', async () => {
    const user = userEvent.setup();
    render(<Shown />);
    const handle = screen.getByRole('slider', { name: 'Pieces looked at, on the curve' });
    fireEvent.keyDown(handle, { key: 'PageDown' });
    fireEvent.keyDown(handle, { key: 'PageDown' });
    for (let press = 0; press < 5; press += 1) fireEvent.keyDown(handle, { key: 'ArrowLeft' });
    expect(handle).toHaveAttribute('aria-valuenow', '12');
    expect(columns().slice(0, 3)).toEqual([
      ['', 'looked at, 12', 'this job, 37'],
      ['a shirt costs', '16.17', '11.13'],
      ['order total', '230.76', '711.50'],
    ]);
    await user.click(screen.getByRole('button', { name: 'Make it 12' }));
    expect(onMake).toHaveBeenCalledExactlyOnceWith(12);
    await user.click(screen.getByRole('button', { name: 'Back to 37' }));
    expect(handle).toHaveAttribute('aria-valuenow', '37');
  });
});
