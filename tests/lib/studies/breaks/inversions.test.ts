import { describe, expect, it } from 'vitest';
import { inversions } from '@/lib/price/list/inversions';
import { exampleList, listOfPairs } from './listFixture';

const stretches = (list: Parameters<typeof inversions>[0], upTo?: number) =>
  inversions(list, upTo).map(({ from, to, cheaperAt }) => [from, to, cheaperAt]);

describe('inversions', () => {
  it('of the example list are 11, 22 to 23 and 45 to 47; 44 ties and is none', () => {
    expect(stretches(exampleList())).toEqual([
      [11, 11, 12],
      [22, 23, 24],
      [45, 47, 48],
    ]);
  });

  it('says what the larger quantity costs', () => {
    expect(inversions(exampleList()).map(({ cheaperTotal }) => cheaperTotal)).toEqual([
      24_000, 43_200, 79_200,
    ]);
  });

  it('are looked for up to what anybody asks for', () => {
    expect(stretches(exampleList(), 24)).toEqual([
      [11, 11, 12],
      [22, 23, 24],
    ]);
  });

  it('are none where prices rise, stay, or there is one break', () => {
    expect(stretches(listOfPairs([[1, 20]]))).toEqual([]);
    expect(
      stretches(
        listOfPairs([
          [1, 20],
          [5, 20],
          [9, 21],
        ]),
      ),
    ).toEqual([]);
  });

  it('reach over a whole break where a later one undercuts it', () => {
    // 2 cost 20 and 3 cost 27, 4 cost 36: all above 5 at 1.
    expect(
      stretches(
        listOfPairs([
          [1, 10],
          [3, 9],
          [5, 1],
        ]),
      ),
    ).toEqual([[1, 4, 5]]);
  });
});
