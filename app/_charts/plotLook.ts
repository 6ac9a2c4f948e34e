/** What every drawing has in common; the colours are the page's own. */
export const plotChart = { accessibilityLayer: false, throttleDelay: 'raf' } as const;

/** Lines without dots that do not grow into place: a drawing that is dragged is drawn anew at every move. */
export const still = { type: 'linear', dot: false, activeDot: false, isAnimationActive: false } as const;

const axis = {
  type: 'number',
  axisLine: false,
  interval: 0,
  tick: { fill: 'var(--ink-2)' },
  allowDataOverflow: true,
} as const;

export const acrossAxis = { ...axis, tickLine: { stroke: 'var(--ink-2)', strokeWidth: 1.5 } } as const;

export const upAxis = { ...axis, tickLine: false } as const;

/** Slanting lines, 6 px apart. */
export const diagonals = {
  width: 8,
  height: 8,
  path: 'M-2 10L10 -2M-2 2L2 -2M6 10L10 6',
  strokeWidth: 1.5,
} as const;
