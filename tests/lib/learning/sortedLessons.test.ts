import { expect, it } from 'vitest';
import { foldLearned } from '@/lib/learning/foldLearned';
import type { Lesson } from '@/lib/learning/lesson';
import { sortedLessons, takenTogether } from '@/lib/learning/sortedLessons';
import { takeOver } from '@/lib/learning/takeOver';
import { clubFacts, hour } from '@/tests/fixtures/clubStandard';
import { learnedFrom, learnedRun } from '@/tests/fixtures/learnedRun';

const lessons = foldLearned(learnedFrom());

/** What is written into its places holds no place any more. */
const inForce = (lesson: Lesson): Lesson => ({ ...lesson, places: [] });
const takenOf = (lesson: Lesson) =>
  takeOver(lesson, () => null, '2026-12-12').body satisfies { readonly value: number };

it('puts the sizes of one blank together, and paper beside them', () => {
  const { paid } = sortedLessons(lessons, []);
  // Six sizes of the one shirt, and the letter sheet.
  expect(paid.map((group) => group.map(({ subject }) => subject.of))).toEqual([
    Array.from({ length: 6 }, () => 'blankPrice'),
    ['sheetPrice'],
  ]);
});

it('offers nothing that came as assumed', () => {
  // Set-up was assumed at 25 min: noted at 25 it stays, at 31 it comes to (5 · 25 + 31) ÷ 6 = 26.
  const of = (minutes: number) => {
    const facts = { ...clubFacts({ reprints: 0 }), hours: [hour(minutes, 'setUp')] };
    return sortedLessons(foldLearned(learnedFrom({ runs: [learnedRun(facts)] })), []);
  };
  const isSetUp = ({ subject }: Lesson) => subject.of === 'minutes' && subject.element === 'setUp';
  expect(of(25).same.some(isSetUp)).toBe(true);
  expect(of(25).moved.some(isSetUp)).toBe(false);
  expect(of(31).same.some(isSetUp)).toBe(false);
  expect(of(31).moved.find(isSetUp)?.measured).toBeCloseTo(26, 12);
});

it('tells a figure no more once it is in force, and again when a further run moved it', () => {
  const scrap = lessons.find(({ subject }) => subject.of === 'scrap');
  if (scrap === undefined) throw new Error('no scrap was learned');
  const taken = [takenOf(scrap)];
  expect(sortedLessons([inForce(scrap)], taken).moved).toEqual([]);
  expect(sortedLessons([inForce(scrap)], []).moved).toHaveLength(1);
  const later = { ...inForce(scrap), observations: scrap.observations + 41 };
  expect(sortedLessons([later], taken).moved).toEqual([later]);
});

it('takes together what was taken over of one blank in one step, the newest first', () => {
  const prices = lessons.filter(({ subject }) => subject.of === 'blankPrice').map(takenOf);
  const entry = (body: (typeof prices)[number], at: number, id: string) => ({ id, at, device: 'one', body });
  const [first, second, third] = prices;
  if (first === undefined || second === undefined || third === undefined) throw new Error('too few sizes');
  const groups = takenTogether([entry(first, 1, 'a'), entry(second, 1, 'b'), entry(third, 2, 'c')]);
  expect(groups.map((group) => group.map(({ id }) => id))).toEqual([['c'], ['a', 'b']]);
});
