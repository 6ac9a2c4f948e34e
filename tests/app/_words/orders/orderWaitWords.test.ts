import { expect, it } from 'vitest';
import { waitAnswer } from '@/app/_words/orders/orderWaitWords';

it('says what comes after an answer: the blanks, or whatever is next where they were ordered', () => {
  const wait = { turn: 'customer', why: 'approval', dueOn: null, lateDays: 0 } as const;
  const answer = (isBought: boolean) =>
    waitAnswer({ turn: 'customer', waits: [wait] }, 'Alex', 'Put away', isBought);
  expect(answer(false)).toEqual({ key: 'One answer from Alex,', after: ' then you buy' });
  expect(answer(true)).toEqual({ key: 'One answer from Alex,', after: ' then you go on' });
});
