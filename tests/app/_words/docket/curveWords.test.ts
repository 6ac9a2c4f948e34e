import { describe, expect, it } from 'vitest';
import { curveVariants } from '@/app/_docket/curve/curveVariants';
import { curveWords, summaryWords, variantWords } from '@/app/_words/docket/curveWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { type CostCurve, curveAnswer } from '@/lib/studies/curve/curveAnswer';
import { club } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

const context: TextContext = { locale: 'en-US', units: club().workshop.units, currency: 'USD' };
const formatter = formatterFor(context);

function study(flatPrice: number): CostCurve {
  const answer = curveAnswer(club(), grid, { flatPrice });
  if (answer.kind !== 'curve') throw new Error('the example has a curve');
  return answer;
}

const flat = study(20);

describe('the words of the curve', () => {
  it('say where it pays its way, where its knee is, and which quantities are just full', () => {
    const said = curveWords(flat, club().job, formatter);
    expect(said[0]).toBe('It pays its way from 9 pieces.');
    expect(said[1]).toMatch(/^The knee is at 23: /);
    // Three more shirts than the 37 asked add 25.67 in the worked example; unrounded it is 25.66.
    expect(said[2]).toMatch(
      /^At 40 the last sheet of Chest badge is just full: 3 pieces more cost 25\.6[67] USD/,
    );
  });

  it('say so where no batch pays', () => {
    expect(curveWords(study(3), club().job, formatter)[0]).toBe(
      'At this price no batch up to 100 pieces pays its way: each loses money. Ask more, or make it cost less.',
    );
  });

  it('say so where a step takes it under again, and where it does for good', () => {
    const said = (lasting: number | null) =>
      curveWords({ ...flat, breakEven: { first: 9, lasting } }, club().job, formatter)[0];
    expect(said(14)).toContain('from 14 on it stays above');
    expect(said(null)).toContain('A later step of sheets or sessions takes it under again');
  });

  it('say what is not drawn', () => {
    const far = { ...flat, asked: 620, to: 500, points: flat.points.slice(0, 98) };
    const said = curveWords(far, club().job, formatter).join(' ');
    expect(said).toContain('The job asks for 620 pieces, more than the 500 that are drawn');
    expect(said).toContain('gives no number for 402 quantities');
  });

  it('tell the curve in a sentence to who does not see it', () => {
    const said = summaryWords(flat, formatter);
    expect(said).toContain('Margin from 1 to 100 pieces: ');
    expect(said).toContain('42.8 % at 37');
    expect(said).toContain('50.5 % at 100.');
  });

  it.each([
    [null, 'costs no less at any batch up to 100'],
    [{ first: 1, lasting: 1 }, 'costs less at every batch'],
    [{ first: 5, lasting: 12 }, 'costs less from 12 pieces on'],
    [{ first: 5, lasting: null }, 'costs less now and then, first at 5'],
  ])('say from where another way is better: %j', (better, words) => {
    expect(variantWords('on A4', flat, better, 100, context)).toContain(words);
  });
});

describe('curveVariants', () => {
  it('offers the job without each of its two prints, and nothing that is as it stands', () => {
    const input = club();
    expect(curveVariants(input, input.blanks).map(({ name }) => name)).toEqual([
      'without Back picture',
      'without Chest badge',
    ]);
  });

  it('offers other sheets, and other blanks of the kind that have the sizes', () => {
    const input = club();
    const [sheet] = input.workshop.sheets;
    const blank = Object.values(input.blanks)[0];
    if (sheet === undefined || blank === undefined) throw new Error('the example has both');
    const sheets = [sheet, { ...sheet, id: 'larger', name: 'Tabloid' }];
    const blanks = {
      ...input.blanks,
      grey: { ...blank, name: 'Grey shirt' },
      small: { ...blank, name: 'Small only', sizes: blank.sizes.slice(0, 1) },
    };
    const names = curveVariants({ ...input, workshop: { ...input.workshop, sheets } }, blanks);
    expect(names.map(({ name }) => name).slice(0, 2)).toEqual(['on Tabloid', 'on Grey shirt']);
    expect(names).toHaveLength(4);
  });
});
