import { packSheets } from '@/lib/packing/sheet/packSheets';
import { type BenchRow, withRatio } from '@/tests/bench/benchRow';
import type { piecesOf } from '@/tests/outside/packingInstances';

/** Paper and pieces without margin or gutter, as published instances have them. */
export const bare = { marginMm: 0, gutterMm: 0, rotate: true };

export interface Paper {
  readonly widthMm: number;
  readonly heightMm: number;
}

export type PackedPiece = ReturnType<typeof piecesOf>[number];

export const requestOf = ({ widthMm, heightMm }: Paper, pieces: readonly PackedPiece[]) => ({
  ...bare,
  sheetWidthMm: widthMm,
  sheetHeightMm: heightMm,
  pieces,
});

/** @returns sheets that the product lays the pieces on */
export function sheetsFor(paper: Paper, pieces: readonly PackedPiece[]): number {
  const answer = packSheets(requestOf(paper, pieces));
  return answer.ok ? answer.value.count : Number.NaN;
}

/** @returns a row of what does not change from run to run. */
export const countRow = (
  what: string,
  unit: 'pieces' | 'bins' | '%',
  value: number,
  yardstick: BenchRow['yardstick'] = null,
): BenchRow => withRatio({ what, unit, median: value, p99: null, yardstick });

/** @returns a length between two others in tenths of a millimetre. */
export const drawn = (random: () => number, least: number, most: number): number =>
  Math.round((least + random() * (most - least)) * 10) / 10;
