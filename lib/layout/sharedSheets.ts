import type { Effort } from '@/lib/packing/pieceRequest';
import { betterRoll } from '@/lib/packing/roll/betterRoll';
import { packRoll } from '@/lib/packing/roll/packRoll';
import { betterSheets } from '@/lib/packing/sheet/betterSheets';
import { packSheets } from '@/lib/packing/sheet/packSheets';
import type { PackedSheet, PackedSheets } from '@/shared/packedSheets';
import { lengthOf } from './apartSheets';
import type { SharedQuestion } from './sharedQuestion';

/** A job is laid out again for every variant of it that is costed: some 25 ms at most. */
const FIRST: Effort = { steps: 200_000, seed: 1 };
const SHORTENING_STEPS = 60_000;

/** @returns the layout that is there at once; null where a piece does not fit. */
export function firstSheets(question: SharedQuestion): PackedSheets | null {
  const packed = packSheets(question.request, FIRST);
  if (!packed.ok) return null;
  return question.isRoll ? shortened(packed.value, question) : packed.value;
}

/**
 * Goes on looking for fewer sheets, or less roll, in slices.
 *
 * @yields null after each slice; a better layout as soon as it is found
 */
export const furtherSheets = (
  { request, isRoll }: SharedQuestion,
  first: PackedSheets,
  effort: Effort,
): Generator<PackedSheets | null, PackedSheets> =>
  isRoll ? betterRoll(request, first, effort) : betterSheets(request, first, effort);

/** @returns the length of roll under the pieces of all sheets, mm. */
export const lengthOfAll = ({ sheets }: PackedSheets, { request }: SharedQuestion): number =>
  sheets.reduce((sum, sheet) => sum + lengthOn(sheet, request), 0);

// Helpers

/** Prints of a roll end behind their last piece: each is laid anew on as little of it as is found. */
function shortened(packed: PackedSheets, { request }: SharedQuestion): PackedSheets {
  const { sheetWidthMm, marginMm, gutterMm } = request;
  const kinds = new Map(packed.sheets.map((sheet) => [JSON.stringify(countsOn(sheet)), sheet]));
  // Equal sheets are laid once, and all of them together in one effort.
  const effort = { ...FIRST, steps: Math.ceil(SHORTENING_STEPS / kinds.size) };
  const laid = new Map(
    [...kinds].map(([kind, sheet]) => {
      const pieces = countsOn(sheet).flatMap(([id, count]) => {
        const piece = request.pieces[Number(id)];
        return piece === undefined ? [] : [{ ...piece, count }];
      });
      return [
        kind,
        packRoll({ rollWidthMm: sheetWidthMm, marginMm, gutterMm, rotate: true, pieces }, effort),
      ];
    }),
  );
  const sheets = packed.sheets.map((sheet) => {
    const roll = laid.get(JSON.stringify(countsOn(sheet)));
    return roll?.ok === true && roll.value.rollLengthMm < lengthOn(sheet, request)
      ? { pieces: roll.value.pieces }
      : sheet;
  });
  return { ...packed, sheets };
}

/** How many of each kind lie on a sheet, by its id. */
function countsOn({ pieces }: PackedSheet): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>();
  for (const { id } of pieces) counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...counts].sort(([a], [b]) => Number(a) - Number(b));
}

const lengthOn = ({ pieces }: PackedSheet, { marginMm }: { readonly marginMm: number }): number =>
  lengthOf(pieces, { marginMm }) ?? 0;
