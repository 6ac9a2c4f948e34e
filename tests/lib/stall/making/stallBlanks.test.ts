import { expect, it } from 'vitest';
import { stallBlanks } from '@/lib/stall/making/stallBlanks';

const row = (blankId: string, size: string, pieces: number) => ({
  ...{ blankId, size, pieces, take: pieces + 9, each: 4.6 },
});

it('takes the hundred blanks of the worked fair for ninety-six shirts, over lines and sizes', () => {
  // 0.9603 of blanks come out good; the sizes of two lines together are the 12, 25, 29, 19, 7 and 4 of the plan.
  const sizes = ['S', 'M', 'L', 'XL', '2XL', '3XL'];
  const rows = [
    [5, 10, 12, 8, 3, 1],
    [7, 15, 17, 11, 4, 3],
  ].flatMap((line) => line.map((pieces, at) => row('shirt', sizes[at] ?? '', pieces)));
  const { sizes: taken, freight } = stallBlanks(
    { freight: 9.5, sizes: rows },
    rows.map(({ pieces }) => pieces / 0.9603),
  );
  const of = (size: string) =>
    taken.filter((one) => one.size === size).reduce((sum, { take }) => sum + take, 0);
  // 12.50, 26.03, 30.20, 19.79, 7.29 and 4.17: whole ones 98, and the two largest remainders are XL and S.
  expect(sizes.map(of)).toEqual([13, 26, 30, 20, 7, 4]);
  expect(freight).toBe(9.5);
  expect(taken.every(({ take, pieces }) => take >= pieces)).toBe(true);
});

it('rounds each blank by itself, and takes no more where nothing is spoiled', () => {
  const rows = [row('shirt', 'M', 3), row('mug', '', 3)];
  const { sizes } = stallBlanks({ freight: null, sizes: rows }, [3.2, 3]);
  expect(sizes.map(({ take }) => take)).toEqual([4, 3]);
});
