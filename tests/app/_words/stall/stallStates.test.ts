import { describe, expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { payWords } from '@/app/_words/stall/stallHeadWords';
import { stallStates } from '@/app/_words/stall/stallStates';
import { fairAsked } from '@/tests/fixtures/fairAsked';
import { fairAnswer } from '@/tests/fixtures/stallAnswer';

const { stallDay, workshop } = fairAsked;
const formatter = formatterFor(workshop);

/** With so many of each goods pressed for the day and at home. */
const making = (pressedOf: (mine: number) => number) => {
  const goods = fairAnswer.goods.map((one) => ({ ...one, atHome: pressedOf(one.mine) }));
  const plan = { ...fairAnswer, goods };
  return stallStates({ stallDay, workshop, plan, grid: [], fixedOn: null, locale: 'en-US', formatter }).making
    .text;
};

describe('what the index says of making', () => {
  it('is the hours of it until some of it is pressed', () => {
    expect(making(() => 0)).toMatch(/ at the bench$/);
  });

  it('is what is left to press after that, and never hours that are done', () => {
    // 96 shirts and 36 mugs are brought.
    const first = fairAnswer.goods[0]?.mine ?? 0;
    let isFirst = true;
    const pressedFirst = (mine: number) => {
      const pressed = isFirst ? mine : 0;
      isFirst = false;
      return pressed;
    };
    expect(making(pressedFirst)).toBe(`${132 - first} pieces to press`);
    expect(making((mine) => mine)).toBe('nothing to press');
  });
});

it('the pay of an hour says that pressing which is done is among its hours', () => {
  expect(payWords(32, 24.17, { formatter, locale: 'en-US' })?.after).toBe('an hour, all 24 h 10 min');
  expect(payWords(32, 24.17, { formatter, locale: 'en-US' }, true)?.after).toBe(
    'an hour, all 24 h 10 min, pressing done among it',
  );
});
