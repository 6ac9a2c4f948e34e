import { expect, it } from 'vitest';
import { timesFeeWords } from '@/app/_words/stall/feeWords';

const number = (value: number, decimals = 2) => value.toFixed(decimals);

it('takings are told as so many times the fee, beside what is good and what is poor', () => {
  // 1,723.00 of the worked fair over its fee of 85.00 are 20.27.
  expect(timesFeeWords('Takings', 1723, 85, { number })).toBe(
    'Takings are 20.3 times the stall fee: 8 to 10 is a good fair, under 5 a poor one, by common practice.',
  );
});

it.each([null, 0])('nothing is told of a fair without a fee: %s', (fee) => {
  expect(timesFeeWords('Takings', 1723, fee, { number })).toBeNull();
});
