import type { CheckedJob } from '@/lib/job/checkedJob';
import type { PackedSheets } from '@/shared/packedSheets';
import { sheetSizes } from '@/shared/tables/sheetSizes';
import { knownBatches } from './batchSheets';
import { knownSheets } from './knownSheets';
import type { KnownBatch, LaidOutPrint } from './laidOutPrint';
import { rollWorthMm } from './rollWorth';
import { asPrints, sharedQuestion } from './sharedQuestion';
import { firstSheets, lengthOfAll } from './sharedSheets';

interface Together {
  readonly prints: readonly LaidOutPrint[];
  readonly shared: PackedSheets | null;
}

/**
 * Lays the good pieces of all placements and lines on sheets together, as is known of the job or else found at once.
 * Each print bears the share of the sheets that it has of the printed area, so that the shares add up to whole sheets.
 *
 * @param prints laid out each by itself; their place in the list is the id of the packed pieces
 * @returns the prints as they were where sharing saves no sheet
 */
export function layOutTogether(job: CheckedJob, prints: readonly LaidOutPrint[]): Together {
  const question = sharedQuestion(job, prints);
  const packed = question && (knownSheets(job.layouts, question) ?? firstSheets(question));
  if (question === null || packed === null) return { prints, shared: null };
  const { isRoll } = question;
  const places = new Set(question.prints);
  const sharing = prints.filter((_, index) => places.has(index));
  const rollMm = rollWorthMm(job.sheet.widthMm);
  const count = isRoll ? lengthOfAll(packed, question) / rollMm : packed.count;
  const apart = isRoll ? question.apart.rollMm / rollMm : question.apart.sheets;
  if (count >= apart - 1e-9) return { prints, shared: null };
  const printed = areaOf(sharing);
  const area = count * (isRoll ? LETTER_MM2 : job.sheet.widthMm * job.sheet.heightMm);
  const batches = isRoll ? [] : knownBatches(job, sharing, packed.count);
  return {
    shared: asPrints(packed, question),
    prints: prints.map((print, index) =>
      places.has(index)
        ? sharedPrint(print, sharing, { count, printed, batches, wasteShare: 1 - printed / area })
        : print,
    ),
  };
}

const { letter } = sheetSizes;
const LETTER_MM2 = letter.widthMm * letter.heightMm;

function sharedPrint(
  print: LaidOutPrint,
  sharing: readonly LaidOutPrint[],
  {
    count,
    printed,
    batches,
    wasteShare,
  }: {
    readonly count: number;
    readonly printed: number;
    readonly batches: readonly KnownBatch[];
    readonly wasteShare: number;
  },
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
    ganged: batches.length === 0 ? { own, others } : { own, others, batches },
  };
}

const areaOf = (prints: readonly LaidOutPrint[]): number =>
  prints.reduce((sum, { widthMm, heightMm, pieces }) => sum + widthMm * heightMm * pieces, 0);
