import { expect, it } from 'vitest';
import { takenWords } from '@/app/_words/afterRun/takenWords';
import { formatterFor } from '@/app/_words/formatter';
import { type RateTaken, rateTakenSchema } from '@/shared/schemas/making/learnedEvents';
import { club } from '@/tests/fixtures/clubJob';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const formatter = formatterFor(club().workshop);
const on = `Taken over ${formatter.day(TEST_DAY)}`;
const rate = (value: number, unit: string) => ({ value, unit, date: TEST_DAY, origin: 'yours' as const });

const takenOf = (
  subject: RateTaken['subject'],
  observations: number,
  moved: readonly (readonly [before: number | null, after: number])[],
  unit: string,
): RateTaken =>
  rateTakenSchema.parse({
    ...{ day: TEST_DAY, subject, value: moved[0]?.[1], observations, spread: null, runIds: [] },
    places: moved.map(([before, after], at) => ({
      ...{ kind: 'job', id: `job-${at}`, path: ['scrap'] },
      ...{ before: before === null ? null : rate(before, unit), after: rate(after, unit) },
    })),
  });

const back = { of: 'scrap', blankId: 'tee', pressId: 'press', position: 'back' } as const;

it('says what a share was and is, and how often it was measured', () => {
  expect(takenWords([takenOf(back, 41, [[0.035, 0.0412]], 'share')], formatter)).toBe(
    `${on}, in 1 place: 3.5 → 4.12 %, measured 41×.`,
  );
});

it('spans what places held where they held different figures, and says where one held none', () => {
  const two = takenOf(
    back,
    41,
    [
      [0.03, 0.0412],
      [0.035, 0.0412],
    ],
    'share',
  );
  expect(takenWords([two], formatter)).toBe(`${on}, in 2 places: 3–3.5 → 4.12 %, measured 41×.`);
  expect(takenWords([takenOf(back, 41, [[null, 0.0412]], 'share')], formatter)).toBe(
    `${on}, in 1 place: none → 4.12 %, measured 41×.`,
  );
});

it('tells prices as paid, sizes that moved alike together', () => {
  const price = (size: string, before: number, after: number) =>
    takenOf({ of: 'blankPrice', blankId: 'tee', size }, 1, [[before, after]], 'money/piece');
  expect(takenWords([price('S', 4.6, 4.72), price('M', 4.6, 4.72), price('2XL', 6.1, 6.22)], formatter)).toBe(
    `${on}, in 3 places: S and M 4.60 USD → 4.72 USD; 2XL 6.10 USD → 6.22 USD, as paid.`,
  );
});
