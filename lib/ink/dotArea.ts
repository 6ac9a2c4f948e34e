/** What a printed tint is compared with. */
export interface Halftone {
  /** Reflectance of the bare paper, 0–1. */
  readonly paper: number;
  /** Reflectance where the ink covers fully, 0 up to below `paper`. */
  readonly solid: number;
  /** How far light spreads inside the paper, from 1 (not at all) to 2 (fully). */
  readonly n: number;
}

/**
 * The share of paper that dots of one ink cover, from the light it throws back: Murray and Davies (J. Franklin
 * Institute 221, 1936), as modified by Yule and Nielsen (TAGA Proceedings 1951) for light that spreads in the
 * paper. With n = 1 it is Murray and Davies' own.
 *
 * @param reflectance 0–1; outside what the halftone can show it is taken as bare paper or as full cover
 * @returns share, 0–1
 * @example dotArea(0.45, { paper: 0.85, solid: 0.05, n: 1 }) // 0.5
 */
export function dotArea(reflectance: number, { paper, solid, n }: Halftone): number {
  const root = (value: number) => value ** (1 / n);
  const share = (root(paper) - root(reflectance)) / (root(paper) - root(solid));
  return Math.min(1, Math.max(0, share));
}
