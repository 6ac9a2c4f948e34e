import { expect, it } from 'vitest';
import { byLuckWords } from '@/app/_words/press/pressWords';
import { twiceRunningChance } from '@/lib/pressing/stopRule';

it.each([
  // 36 pairs, each 0.03 · 0.03 after a good one: 36 · 0.0009 · 0.97 and a first pair, near 3.1 %.
  [twiceRunningChance(37, 0.03), 'About 1 in 32 runs does this by bad luck.'],
  // One pair: 0.0009.
  [twiceRunningChance(2, 0.03), 'Bad luck alone hardly ever does this.'],
  [0.5, 'About 1 in 2 runs does this by bad luck.'],
  [0.9, 'Most runs do this by bad luck alone.'],
])('tells a chance of %d as one in so many', (chance, words) => {
  expect(byLuckWords('runs', chance)).toBe(words);
});
