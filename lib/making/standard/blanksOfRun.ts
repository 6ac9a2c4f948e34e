import { blanksTaken, casesToCover } from '@/lib/grid/blanksTaken';
import { shareSpares } from '@/lib/grid/shareSpares';
import { coverOf } from '@/lib/job/coversOf';
import type { LaidOut } from '@/lib/job/spareStacks';
import type { RunJob } from '@/lib/making/runPlan';
import type { Cover } from '@/shared/schemas/making/supply';

/** A size of a line with the blanks laid out for it. */
interface SizeBlanks extends LaidOut {
  readonly blankName: string;
  /** That a blank ends good. */
  readonly chance: number;
}

/**
 * Blanks of each size of all jobs of a run by its cover, which all that take a blank in one size share: so many as a
 * buying list over the same jobs has. Those that a customer brings cannot be bought again: of them every run takes as
 * many as the customer was asked for.
 *
 * @returns job by job, the sizes of each as its sums have them
 */
export function blanksOfRun(jobs: readonly RunJob[], cover: Cover): readonly SizeBlanks[] {
  const sizes = jobs.flatMap((job, work) => sizesToLayOut(job, work));
  const bought = sizes.filter(({ laid }) => !laid.isBrought);
  const found = coverOf(
    bought.map(({ work, each, laid: { blankId, size, wanted, chance } }) => ({
      ...{ work, blankId, size, chance, each },
      pieces: wanted,
    })),
    cover,
  );
  const taken = new Map<SizeToLayOut, number>();
  for (const stack of found.sizes) {
    const own = bought.filter(({ laid }) => laid.blankId === stack.blankId && laid.size === stack.size);
    const parts = shareSpares(
      own.map(({ laid: { wanted, chance } }) => ({ pieces: wanted, chance })),
      stack.take,
    );
    own.forEach((one, at) => {
      taken.set(one, parts[at] ?? one.laid.wanted);
    });
  }
  return sizes.map((one) => ({ ...one.laid, take: taken.get(one) ?? one.laid.take }));
}

// Helpers

interface SizeToLayOut {
  /** Place of its job. */
  readonly work: number;
  /** Of one blank, currency units. */
  readonly each: number;
  /** What is bought takes as many as it wants until all of the run is covered. */
  readonly laid: SizeBlanks;
}

function sizesToLayOut(
  { work: { jobId }, input, costed: { sheet } }: RunJob,
  work: number,
): readonly SizeToLayOut[] {
  const lines = new Map(
    input.job.lines.map(({ id, blankId }) => {
      const blank = input.blanks[blankId];
      return [
        id,
        { blankId, blankName: blank?.name ?? blankId, isBrought: blank?.suppliedBy === 'customer' },
      ];
    }),
  );
  const isBrought = (lineId: string) => lines.get(lineId)?.isBrought ?? false;
  const asked = [...lines.values()].some((line) => line.isBrought)
    ? blanksTaken(sheet, (lineId) => (isBrought(lineId) ? null : (lines.get(lineId)?.blankId ?? lineId))).take
    : [];
  return casesToCover(sheet).map(({ lineId, size, pieces, chance, price }, at) => ({
    ...{ work, each: price },
    laid: {
      ...{ jobId, lineId, size, chance, wanted: pieces },
      ...(lines.get(lineId) ?? { blankId: lineId, blankName: lineId, isBrought: true }),
      take: (isBrought(lineId) ? asked[at] : undefined) ?? pieces,
    },
  }));
}
