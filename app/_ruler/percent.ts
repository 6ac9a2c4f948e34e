/** @returns a place along a drawing, 0 to 1, as a share of its width: 0.5 is `50.000%`. */
export const percent = (ratio: number): string => `${(ratio * 100).toFixed(3)}%`;
