import { listed } from '@/app/_words/listed';
import type { ChangedPart, JobSince } from '@/lib/making/list/changedSince';

/** @returns what changed of each job since its run began, and that what was frozen stays; empty where nothing did */
export function sinceWords(jobs: readonly JobSince[]): readonly string[] {
  const gone = jobs.filter(({ isGone }) => isGone).map(({ name }) => name);
  const told = jobs
    .filter(({ isGone }) => !isGone)
    .map(({ name, parts }) => {
      const what =
        parts.length === 0 ? 'prices, rates or the like' : listed(parts.map((part) => partNames[part]));
      return `${name} changed since the run began: ${what}. ${STAYS}`;
    });
  if (gone.length === 0) return told;
  const are = gone.length === 1 ? 'is' : 'are';
  return [
    ...told,
    `${listed(gone)} ${are} no longer here, removed or on another device since the run began. ${STAYS}`,
  ];
}

// Helpers

const STAYS = 'What was frozen then stays: the run is held against it.';

const partNames: Readonly<Record<ChangedPart, string>> = {
  lines: 'its lines',
  pieces: 'pieces',
  blank: 'the blank',
  prints: 'prints',
  recipe: 'the recipe',
};
