import { describe, expect, test } from 'vitest';
import { layoutProblems, pieceProblems } from './layoutProblems';

const paper = { widthMm: 100, heightMm: 50, marginMm: 5, gutterMm: 2 };
const place = (xMm: number, yMm: number) => ({ xMm, yMm, widthMm: 20, heightMm: 10, turned: false });

describe('the checker of layouts finds what is wrong', () => {
  test.each([
    ['pieces a gutter apart', [place(5, 5), place(27, 5), place(5, 17)], 0],
    ['a piece beyond the right margin', [place(75.1, 5)], 1],
    ['a piece beyond the lower margin', [place(5, 35.1)], 1],
    ['a piece in the left margin', [place(4.9, 5)], 1],
    ['pieces closer than the gutter', [place(5, 5), place(26.9, 5)], 1],
    ['pieces above each other closer than the gutter', [place(5, 5), place(15, 16.9)], 1],
    ['a piece on another', [place(5, 5), place(5, 5)], 1],
  ])('%s: %#', (_, places, count) => expect(layoutProblems(places, paper)).toHaveLength(count));

  test.each([
    ['all there', [{ ...place(5, 5), id: 'a' }], true, 0],
    ['one missing', [], true, 1],
    ['one too many', [1, 2].map(() => ({ ...place(5, 5), id: 'a' })), true, 1],
    ['one of another size', [{ ...place(5, 5), id: 'a', widthMm: 21 }], true, 1],
    [
      'one that was not asked',
      [
        { ...place(5, 5), id: 'b' },
        { ...place(5, 5), id: 'a' },
      ],
      true,
      1,
    ],
    ['one turned', [{ ...place(5, 5), id: 'a', widthMm: 10, heightMm: 20, turned: true }], true, 0],
    [
      'one turned against the will',
      [{ ...place(5, 5), id: 'a', widthMm: 10, heightMm: 20, turned: true }],
      false,
      1,
    ],
  ])('%s', (_, placed, rotate, count) => {
    const asked = [{ id: 'a', widthMm: 20, heightMm: 10, count: 1 }];
    expect(pieceProblems(placed, asked, rotate)).toHaveLength(count);
  });
});
