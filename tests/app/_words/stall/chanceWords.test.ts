import { expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { chanceSumWords } from '@/app/_words/stall/chanceWords';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import { fixedRate } from '@/tests/fixtures/numbers';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const { units } = exampleWorkshop(TEST_DAY);
const formatter = formatterFor({ locale: 'en-US', currency: 'USD', units });
const words = (...chances: readonly (number | null)[]) =>
  chanceSumWords(
    chances.map((chance, at) => ({
      ...{ id: `weather-${at}`, name: 'dry', factor: null },
      chance: chance === null ? null : fixedRate(chance, 'share'),
    })),
    formatter,
  );

it.each([
  ['less', [0.65, 0.25], '90 %'],
  ['more', [0.65, 0.25, 0.2], '110 %'],
])('chances that add up to %s than one are told with what they add up to', (_, chances, sum) => {
  expect(words(...chances)).toBe(
    `The chances add up to ${sum}, so one day would count for more or less than one. Change them until they make 100 %.`,
  );
});

it('nothing is said where they make one, a third three times too, or while some are missing', () => {
  expect(words(0.65, 0.25, 0.1)).toBeNull();
  // The plan takes these as all, so nobody is asked to change them.
  expect(words(0.333, 0.333, 0.333)).toBeNull();
  expect(words(0.65, null)).toBeNull();
  expect(words()).toBeNull();
});
