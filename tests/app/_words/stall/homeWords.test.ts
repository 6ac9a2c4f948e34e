import { expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { leftInCarWords } from '@/app/_words/stall/homeWords';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

it('what closed days left in the car is told by day, goods that are not of this fair left out', () => {
  const of = (stallDayId: string, title: string, size: string, pieces: number, lineId = 'fern') => ({
    ...{ jobId: 'fair-shirts', lineId, size, stallDayId, title, pieces },
  });
  const left = [
    of('winter', 'Winter Fair', 'L', 3),
    of('winter', 'Winter Fair', 'M', 1),
    of('summer', 'Summer Fair', 'L', 2),
    of('summer', 'Summer Fair', 'L', 2, 'elsewhere'),
  ];
  const after =
    'The plan counts on them; what is not there will be short, so count them and close that day again.';
  expect(leftInCarWords(left, fairPlan.goods, formatterFor(exampleWorkshop(TEST_DAY)))).toEqual([
    `In the car from Winter Fair, not counted: 3 Fern L and 1 Fern M. ${after}`,
    `In the car from Summer Fair, not counted: 2 Fern L. ${after}`,
  ]);
});
