import { expect, it } from 'vitest';
import { goodMade } from '@/lib/variances/goodMade';
import { stillToPress } from '@/lib/variances/stillToPress';
import { clubPressings, clubStandard } from '@/tests/fixtures/clubStandard';

const standard = clubStandard();
const madeOf = (pressings: ReturnType<typeof clubPressings>) =>
  goodMade(
    standard,
    pressings.map(({ body }) => body),
  );

it('has all 37 still to press before anybody noted a piece', () => {
  expect(stillToPress(standard, null)).toEqual({ wanted: 37, good: 0, toPress: 37 });
});

it('has nothing still to press once 37 badges came good, and the 11 L without theirs', () => {
  expect(stillToPress(standard, madeOf(clubPressings())).toPress).toBe(0);
  const withoutL = clubPressings().filter(
    ({ body }) => !(body.size === 'L' && body.placementId === 'badge' && body.result === 'good'),
  );
  expect(stillToPress(standard, madeOf(withoutL))).toEqual({ wanted: 37, good: 26, toPress: 11 });
});

it('does not make up for a size with more of another', () => {
  const [small] = clubPressings().filter(({ body }) => body.size === 'S' && body.placementId === 'badge');
  const six = Array.from({ length: 6 }, () => small).filter((one) => one !== undefined);
  // Six of S where four are wanted: the other 33 are still to press.
  expect(stillToPress(standard, madeOf(six))).toEqual({ wanted: 37, good: 6, toPress: 33 });
});
