import type { Box } from './box';

/** What makes a box large: boxes are laid from the largest on, by each of these in turn. */
export const boxSizes: readonly ((box: Box) => number)[] = [
  ({ width, height }) => width * height,
  ({ width, height }) => Math.max(width, height),
  ({ width, height }) => Math.min(width, height),
  ({ width, height }) => width + height,
];
