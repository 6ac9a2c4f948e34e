import { expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { planDifferenceWords } from '@/app/_words/stall/carWords';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import { planDifferences } from '@/lib/stall/car/planDifferences';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const told = (before: StallPlan, now: StallPlan) => {
  const differences = planDifferences(before, now);
  return differences === null
    ? []
    : planDifferenceWords(differences, formatterFor(exampleWorkshop(TEST_DAY)));
};

it('what the plan of now says otherwise is told for seconds, weathers and costs apart', () => {
  const { weathers, goods } = fairPlan;
  const half = { ...fairPlan, secondsShare: 0.5 };
  expect(told(half, { ...fairPlan, secondsShare: 0.7 })).toEqual([
    'Seconds: 70 % of the price for 50 % of the price.',
  ]);
  expect(told(half, fairPlan)).toEqual(['Seconds: no price for 50 % of the price.']);
  expect(told(fairPlan, { ...fairPlan, weathers: weathers.slice(0, 2) })).toEqual([
    'Other weathers or chances: taps and the evening go by those that were fixed.',
  ]);
  expect(told(fairPlan, { ...fairPlan, goods: goods.map((one) => ({ ...one, packaging: 1 })) })).toEqual([
    'Other costs of goods, of packing, of leftovers: the evening reckons with those that were fixed.',
  ]);
  expect(told(fairPlan, { ...fairPlan, lastHourFrom: 960 })).toEqual([
    'Days, sets, the last hour, seconds that come along, the float, fees or costs of the day are not what was fixed.',
  ]);
});
