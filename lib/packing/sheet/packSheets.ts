import { at } from '@/lib/packing/at';
import { boxKinds } from '@/lib/packing/boxKinds';
import { piecesPerSheet } from '@/lib/packing/equal/piecesPerSheet';
import { type FitProblem, fitProblem } from '@/lib/packing/fitProblem';
import { nameBoxes } from '@/lib/packing/nameBoxes';
import type { Effort, NamedPiece, PieceKind, PieceRequest } from '@/lib/packing/pieceRequest';
import { seededRandom } from '@/lib/packing/seededRandom';
import { binTicks, pieceTicks } from '@/lib/packing/ticks';
import type { PackedSheet, PackedSheets } from '@/shared/packedSheets';
import { failed, ok, type Result } from '@/shared/result';
import { packBoxes } from './packBoxes';
import { sheetBound } from './sheetBound';
import { sheetsRoom } from './sheetsRoom';

export type { PackedSheets } from '@/shared/packedSheets';

export interface SheetsRequest extends PieceRequest {
  readonly sheetWidthMm: number;
  readonly sheetHeightMm: number;
}

/** Part of the work for what full sheets of one piece leave over; the rest goes to mixing all. */
const SHARE_OF_REST = 0.3;

/** A hundred different pieces take some 60 ms. */
const USUAL_EFFORT: Effort = { steps: 500_000, seed: 1 };

/**
 * Lays pieces of several sizes on as few equal sheets as it finds. The same request gives the same layout.
 *
 * @param effort a larger number of steps looks longer for fewer sheets
 * @example
 * packSheets({ sheetWidthMm: 100, sheetHeightMm: 50, marginMm: 0, gutterMm: 0, rotate: true,
 *   pieces: [{ id: 'a', widthMm: 50, heightMm: 50, count: 3 }] }) // two sheets, and no layout needs fewer
 */
export function packSheets(
  request: SheetsRequest,
  effort: Effort = USUAL_EFFORT,
): Result<PackedSheets, FitProblem> {
  const { sheetWidthMm, sheetHeightMm } = request;
  const problem = fitProblem({ widthMm: sheetWidthMm, heightMm: sheetHeightMm }, request);
  if (problem !== null) return failed(problem);
  const { swapped, bin, kinds } = sheetsRoom(request);
  const lowerBound = sheetBound(bin, kinds);
  const mixed = (asked: PieceRequest, least: number, steps: number): readonly PackedSheet[] =>
    packBoxes(boxKinds(asked, swapped), bin, least, { steps }, seededRandom(effort.seed)).map((boxes) => ({
      pieces: nameBoxes(boxes, asked, swapped),
    }));
  const repeated = repeatSheets(request, (rest, done) =>
    mixed(rest, Math.max(1, lowerBound - done), effort.steps * SHARE_OF_REST),
  );
  const isEnough = repeated !== null && (repeated.length <= lowerBound || request.pieces.length === 1);
  const free = isEnough
    ? null
    : mixed(request, lowerBound, effort.steps * (repeated === null ? 1 : 1 - SHARE_OF_REST));
  const sheets =
    repeated !== null && (free === null || repeated.length <= free.length) ? repeated : (free ?? []);
  return ok({ sheets, count: sheets.length, lowerBound, guillotineBound: null });
}

/**
 * Fills sheets with one piece each as long as they get full: the best layout of equal pieces over and over, and
 * fewer different sheets to cut. What is left over is packed together.
 *
 * @returns null where no piece fills a sheet
 */
function repeatSheets(
  request: SheetsRequest,
  packRest: (rest: PieceRequest, done: number) => readonly PackedSheet[],
): readonly PackedSheet[] | null {
  const only = request.pieces.length === 1;
  const plans = request.pieces.map((piece) => {
    const mayFill = only || piece.count >= gridCount(request, piece);
    const places = mayFill ? (only ? plainest : layOutAlone)(request, piece) : [];
    const fills = places.length > 1 || only;
    return { piece, places, full: fills ? Math.floor(piece.count / places.length) : 0 };
  });
  if (!only && plans.every(({ full }) => full === 0)) return null;
  const sheets = plans.flatMap(({ places, full }) =>
    Array.from({ length: full }, () => ({ pieces: places })),
  );
  const left = plans.map(({ piece, places, full }) => ({
    ...piece,
    count: piece.count - full * places.length,
  }));
  const pieces = left.filter(({ count }) => count > 0);
  if (pieces.length === 0) return sheets;
  if (!only) return [...sheets, ...packRest({ ...request, pieces }, sheets.length)];
  return [...sheets, { pieces: at(plans, 0).places.slice(0, at(pieces, 0).count) }];
}

const layOutAlone = (request: SheetsRequest, piece: PieceKind): readonly NamedPiece[] =>
  piecesPerSheet({ ...request, pieceWidthMm: piece.widthMm, pieceHeightMm: piece.heightMm }).pieces.map(
    (place) => ({ id: piece.id, ...place }),
  );

/** Nothing is gained by turning pieces that take as many sheets upright. */
function plainest(request: SheetsRequest, piece: PieceKind): readonly NamedPiece[] {
  const best = layOutAlone(request, piece);
  const upright = layOutAlone({ ...request, rotate: false }, piece);
  return Math.ceil(piece.count / upright.length) === Math.ceil(piece.count / best.length) ? upright : best;
}

/** Pieces that a sheet surely holds; fewer are not worth a layout of their own. */
function gridCount(
  { sheetWidthMm, sheetHeightMm, marginMm, gutterMm }: SheetsRequest,
  { widthMm, heightMm }: PieceKind,
): number {
  const columns = Math.floor(binTicks(sheetWidthMm, marginMm, gutterMm) / pieceTicks(widthMm, gutterMm));
  const rows = Math.floor(binTicks(sheetHeightMm, marginMm, gutterMm) / pieceTicks(heightMm, gutterMm));
  return columns * rows;
}
