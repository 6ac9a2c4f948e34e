import type { CheckedJob } from '@/lib/job/checkedJob';
import { piecesPerSheet } from '@/lib/packing/equal/piecesPerSheet';
import type { Effort } from '@/lib/packing/pieceRequest';
import type { PlacedPiece } from '@/lib/packing/placedPiece';
import { packRoll } from '@/lib/packing/roll/packRoll';
import { rollStrips } from '@/lib/packing/roll/rollStrips';
import { type PackedSheets, packSheets } from '@/lib/packing/sheet/packSheets';
import { sheetSizes } from '@/shared/tables/sheetSizes';
import { lengthOf } from './apartSheets';
import { centred } from './centred';
import type { LaidOutPrint } from './laidOutPrint';
import { rollQuestion } from './rollQuestion';
import { rollWorthMm } from './rollWorth';
import { sheetQuestion } from './sheetQuestion';

interface Together {
  readonly prints: readonly LaidOutPrint[];
  readonly shared: PackedSheets | null;
}

/** A job is laid out again for every variant of it that is costed: some 25 ms at most. */
const EFFORT: Effort = { steps: 200_000, seed: 1 };
const SHORTENING_STEPS = 60_000;

/**
 * Lays the good pieces of all placements and lines on sheets together. Each print bears the share of the sheets
 * that it has of the printed area, so that the shares add up to whole sheets.
 *
 * @param prints laid out each by itself; their place in the list is the id of the packed pieces
 * @returns the prints as they were where sharing saves no sheet
 */
export function layOutTogether(job: CheckedJob, prints: readonly LaidOutPrint[]): Together {
  const isRoll = job.sheet.form === 'roll';
  const shares = prints.map((print) => goesBordered(job, print));
  const sharing = prints.filter((_, index) => shares[index]);
  if (sharing.length < 2) return { prints, shared: null };
  const { sheetWidthMm, sheetHeightMm, marginMm, gutterMm } = sheetQuestion(job, job.sheet);
  const packed = packSheets(
    {
      sheetWidthMm,
      sheetHeightMm,
      marginMm,
      gutterMm,
      rotate: true,
      pieces: prints.flatMap(({ widthMm, heightMm, pieces }, index) =>
        shares[index] ? [{ id: String(index), widthMm, heightMm, count: pieces }] : [],
      ),
    },
    EFFORT,
  );
  if (!packed.ok) return { prints, shared: null };
  const shared = centredSheets(isRoll ? shortened(packed.value, job, prints) : packed.value, job);
  const count = isRoll ? lengthOfAll(shared, job) / rollWorthMm(job.sheet.widthMm) : shared.count;
  const apart = isRoll
    ? sharing.reduce((sum, { roll }) => sum + (roll?.lengthMm ?? 0), 0) / rollWorthMm(job.sheet.widthMm)
    : sharing.reduce((sum, { sheets }) => sum + sheets, 0);
  if (count >= apart - 1e-9) return { prints, shared: null };
  const printed = areaOf(sharing);
  const area = count * (isRoll ? LETTER_MM2 : job.sheet.widthMm * job.sheet.heightMm);
  return {
    shared,
    prints: prints.map((print, index) =>
      shares[index] ? sharedPrint(print, sharing, { count, printed, wasteShare: 1 - printed / area }) : print,
    ),
  };
}

const { letter } = sheetSizes;
const LETTER_MM2 = letter.widthMm * letter.heightMm;

/** A print that only goes without borders lies by itself. */
const goesBordered = (job: CheckedJob, print: LaidOutPrint): boolean =>
  job.sheet.form === 'roll'
    ? rollStrips(rollQuestion(job, print)) !== null
    : piecesPerSheet(sheetQuestion(job, print)).count > 0;

/** Prints of a roll end behind their last piece: each is laid anew on as little of it as is found. */
function shortened(packed: PackedSheets, job: CheckedJob, prints: readonly LaidOutPrint[]): PackedSheets {
  const { sheetWidthMm, marginMm, gutterMm } = sheetQuestion(job, job.sheet);
  const kinds = new Map(packed.sheets.map((sheet) => [JSON.stringify(countsOn(sheet)), sheet]));
  // Equal sheets are laid once, and all of them together in one effort.
  const effort = { ...EFFORT, steps: Math.ceil(SHORTENING_STEPS / kinds.size) };
  const laid = new Map(
    [...kinds].map(([kind, sheet]) => {
      const pieces = countsOn(sheet).flatMap(([id, count]) => {
        const print = prints[Number(id)];
        return print === undefined ? [] : [{ id, widthMm: print.widthMm, heightMm: print.heightMm, count }];
      });
      return [
        kind,
        packRoll({ rollWidthMm: sheetWidthMm, marginMm, gutterMm, rotate: true, pieces }, effort),
      ];
    }),
  );
  const sheets = packed.sheets.map((sheet) => {
    const roll = laid.get(JSON.stringify(countsOn(sheet)));
    return roll?.ok === true && roll.value.rollLengthMm < lengthWith(sheet.pieces, marginMm)
      ? { pieces: roll.value.pieces }
      : sheet;
  });
  return { ...packed, sheets };
}

/** Each kind of sheet in the middle of the paper; of a roll across it, as a print begins at its border. */
function centredSheets({ sheets, ...packed }: PackedSheets, { sheet }: CheckedJob): PackedSheets {
  const middle = {
    xMm: sheet.widthMm / 2,
    yMm: sheet.form === 'roll' ? null : sheet.heightMm / 2,
  };
  return { ...packed, sheets: sheets.map(({ pieces }) => ({ pieces: centred(pieces, middle) })) };
}

/** How many of each print lie on a sheet, by the id of the print. */
function countsOn({ pieces }: PackedSheets['sheets'][number]): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>();
  for (const { id } of pieces) counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...counts].sort(([a], [b]) => Number(a) - Number(b));
}

const lengthWith = (pieces: readonly PlacedPiece[], marginMm: number): number =>
  lengthOf(pieces, { marginMm }) ?? 0;

const lengthOfAll = ({ sheets }: PackedSheets, { printer }: CheckedJob): number =>
  sheets.reduce((sum, { pieces }) => sum + lengthWith(pieces, printer.marginMm), 0);

function sharedPrint(
  print: LaidOutPrint,
  sharing: readonly LaidOutPrint[],
  {
    count,
    printed,
    wasteShare,
  }: { readonly count: number; readonly printed: number; readonly wasteShare: number },
): LaidOutPrint {
  const area = print.widthMm * print.heightMm;
  const own = areaOf(sharing.filter(({ lineId }) => lineId === print.lineId)) / area;
  const others = printed / area - own;
  // Of a roll, whole sheets of paper are as long as the strip that a replacement takes, or a little longer.
  const whole = print.roll === undefined ? count : Math.max(1, Math.floor(count / print.sheetWorth));
  return {
    ...print,
    perSheet: (own + others) / whole,
    sheetWorth: print.roll === undefined ? 1 : count / whole,
    turned: false,
    placed: [],
    sheets: (print.pieces * whole) / (own + others),
    spare: 0,
    wasteShare,
    ganged: { own, others },
  };
}

const areaOf = (prints: readonly LaidOutPrint[]): number =>
  prints.reduce((sum, { widthMm, heightMm, pieces }) => sum + widthMm * heightMm * pieces, 0);
