import type { Lying } from './stockEntry';

/** @returns whether something lies where and as a job can take it: at home, first grade. */
export const isReady = ({ place, grade }: Pick<Lying, 'place' | 'grade'>): boolean =>
  place.kind === 'home' && grade === 'first';
