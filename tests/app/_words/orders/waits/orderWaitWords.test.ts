import { expect, it } from 'vitest';
import { waitAnswer } from '@/app/_words/orders/waits/orderWaitWords';

it('says what comes after an answer: the blanks, or whatever is next where they were ordered', () => {
  const wait = { turn: 'customer', why: 'approval', dueOn: null, lateDays: 0 } as const;
  const answer = (isBought: boolean) =>
    waitAnswer({ turn: 'customer', waits: [wait] }, 'Alex', 'Put away', isBought);
  expect(answer(false)).toEqual({ key: 'One answer from Alex,', after: ' then you buy' });
  expect(answer(true)).toEqual({ key: 'One answer from Alex,', after: ' then you go on' });
});

it('says that somebody has to answer, not that a thing of theirs is missing, which has a row of its own', () => {
  const own = { turn: 'you', why: 'answer', dueOn: null, lateDays: 0 } as const;
  const answer = (why: 'openItem' | 'deposit') =>
    waitAnswer(
      { turn: 'you', waits: [own, { turn: 'customer', why, dueOn: null, lateDays: 0 }] },
      ...(['Alex', 'Put away', false] as const),
    );
  expect(answer('openItem')).toEqual({ key: 'You answer with a quote' });
  expect(answer('deposit')).toEqual({ key: 'You answer with a quote,', after: ' and Alex has to answer' });
});
