import { expect, it } from 'vitest';
import { inLanes } from '@/app/_offline/worker/inLanes';

const turn = () => new Promise<void>((resolve) => setTimeout(resolve));

it('all items are worked on once, no more at a time than there are lanes', async () => {
  const done: number[] = [];
  let underWay = 0;
  let most = 0;
  await inLanes([1, 2, 3, 4, 5, 6, 7], 3, async (item) => {
    underWay += 1;
    most = Math.max(most, underWay);
    await turn();
    underWay -= 1;
    done.push(item);
  });
  expect(done.toSorted()).toEqual([1, 2, 3, 4, 5, 6, 7]);
  expect(most).toBe(3);
});

it('a failure is told when nothing is under way any more, and nothing is begun after it', async () => {
  const begun: number[] = [];
  const ended: number[] = [];
  const work = async (item: number) => {
    begun.push(item);
    if (item === 2) throw new Error('not there');
    await turn();
    await turn();
    ended.push(item);
  };
  await expect(inLanes([1, 2, 3, 4, 5, 6], 3, work)).rejects.toThrow('not there');
  expect(begun).toEqual([1, 2, 3]);
  expect(ended).toEqual([1, 3]);
});
