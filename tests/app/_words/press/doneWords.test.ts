import { describe, expect, it } from 'vitest';
import { turnDone } from '@/app/_words/press/doneWords';

type Turn = Parameters<typeof turnDone>[0];
const front = (jobId: string, lineId: string, toGo = 0) =>
  ({ jobId, lineId, jobName: jobId, lineName: lineId, placement: { name: 'Front print' }, toGo }) as Turn;

describe('a print of which nothing is left to press', () => {
  const away = front('Club', 'Away');

  it.each([
    ['of the only design', [away], 'Front print is done'],
    ['of one of two designs', [away, front('Club', 'Home')], 'Front print, Away: done'],
    ['of one of two jobs', [away, front('Band', 'Tour')], 'Front print, Club: done'],
  ])('%s is told apart from the others', (_, turns, words) => {
    expect(turnDone(away, turns)).toBe(words);
  });

  it('says that it is short, and of which design', () => {
    const short = front('Club', 'Away', 2);
    expect(turnDone(short, [short, front('Club', 'Home')])).toBe('Front print, Away: nothing left to press');
  });
});
