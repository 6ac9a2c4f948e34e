import { type CostedJob, costJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { priceLines } from '@/lib/price/priceTable';
import { askedInput, askedLine, type SuggestedPrice, suggestionFor } from '@/lib/price/suggestedPrice';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import { costInput } from './costInput';

/** A job at the prices it would go out at, and the documents that ask them. */
interface OfferedJob {
  readonly input: JobInput;
  readonly costed: CostedJob;
}

/**
 * Where every study of a job begins: the job as it would go out, with what the sums suggest asked where nobody has
 * decided a price. What a price pays and leaves is told of this job, so that no figure beside it belongs to another.
 *
 * @param input documents that their schemas have read
 * @returns null where a stop stands or a sum gives no number
 */
export function costOffered(input: JobInput, grid: Grid): OfferedJob | null {
  const costed = costInput(input, grid);
  if (costed === null) return null;
  if (input.job.lines.every(({ askedPrice }) => askedPrice !== null)) return { input, costed };
  const { suggested } = priceLines(costed, grid);
  const offered = offeredJob(costed, suggested, grid);
  if (offered === costed) return { input, costed };
  return { input: askedInput(input, suggested), costed: offered };
}

/**
 * @param suggested what the lists of the job suggest
 * @returns the job itself where every price is decided, or where the sums at another price come out faulty
 */
export function offeredJob(costed: CostedJob, suggested: readonly SuggestedPrice[], grid: Grid): CostedJob {
  const { laidOut, sheet } = costed;
  const { job } = laidOut;
  const lines = job.lines.map((line): ResolvedLine => {
    const found = suggestionFor(line.line, suggested);
    if (found === null) return line;
    const more = new Map(found.sizes.map((one) => [one.size, one.more]));
    return {
      ...line,
      line: askedLine(line.line, found, sheet.currency),
      sizes: line.sizes.map((size) => ({
        ...size,
        // A typed start stands beside a price that nobody has decided yet.
        askedStart: found.start > 0 ? fromMinor(found.start, sheet.currency) : size.askedStart,
        askedPrice:
          fromMinor(found.each, sheet.currency) + fromMinor(more.get(size.size) ?? NOTHING, sheet.currency),
      })),
    };
  });
  if (lines.every((line, index) => line === job.lines[index])) return costed;
  const again = costJob({ ...laidOut, job: { ...job, lines } }, grid);
  return again.kind === 'costed' ? again.job : costed;
}

// Helpers

const NOTHING = 0 as MinorUnits;
