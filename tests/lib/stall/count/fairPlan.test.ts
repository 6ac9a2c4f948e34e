import { expect, test } from 'vitest';
import { stallPlanSchema } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';

test('the plan of the fair can be kept, and brings 96 shirts and 36 mugs', () => {
  expect(stallPlanSchema.parse(fairPlan)).toEqual(fairPlan);
  const brought = (rangeId: string) =>
    fairPlan.goods.reduce((sum, goods) => (goods.rangeId === rangeId ? sum + goods.bring : sum), 0);
  expect([brought('shirts'), brought('mugs')]).toEqual([96, 36]);
});
