import { describe, expect, it } from 'vitest';
import { sparesWords } from '@/app/_words/afterRun/afterRunWords';
import { formatterFor } from '@/app/_words/formatter';
import { groupLine, worthWords } from '@/app/_words/making/stockroomWords';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const formatter = formatterFor(exampleWorkshop(TEST_DAY));
const worth = { paid: [{ currency: 'USD', minor: 553 }], unknown: 0, unknownThings: 0, shortThings: 0 };

describe('own goods in stock', () => {
  it('are called by what of them was bought; what was bought whole was paid', () => {
    expect(worthWords(worth, 'finished', formatter, 'en-US', '')).toEqual([
      'Bought-in cost 5.53 USD: own work is not in it.',
    ]);
    expect(worthWords(worth, 'blank', formatter, 'en-US', '')).toEqual(['Paid 5.53 USD.']);
    const line = (kind: 'finished' | 'paper') =>
      groupLine({ kind, isNoted: true, isShort: false, worth }, formatter, 'en-US');
    expect([line('finished'), line('paper')]).toEqual([
      '5.53 USD at bought-in cost',
      '5.53 USD at what was paid',
    ]);
  });

  it('that a run left are told with their seconds', () => {
    const told = (pieces: number, seconds: number, cost: number) =>
      sparesWords({ spares: { pieces, seconds, cost }, currency: 'USD' }, formatter, 'en-US');
    expect(told(1, 0, 5.53)).toBe(
      '1 piece more than ordered lies in stock at 5.53 USD, its bought-in cost. It brings no price in yet.',
    );
    expect(told(2, 1, 16.59)).toBe(
      '2 pieces more than ordered and 1 second lie in stock at 16.59 USD, their bought-in cost. They bring no price in yet.',
    );
  });
});
