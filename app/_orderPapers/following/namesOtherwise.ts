import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { nameCountWords } from '@/app/_words/names/nameCountWords';
import { compareCounts } from '@/lib/names/compareCounts';

/** @returns of each thing with names how they differ from what is ordered, size by size; nothing where they agree. */
export function namesOtherwise({ order, goods, formatter }: OrderOnPaper): readonly string[] {
  return goods.jobs.flatMap(({ jobId, input: { job, blanks } }) =>
    job.lines.flatMap((line) => {
      const own = order.lines.find((one) => one.jobId === jobId && one.lineId === line.id);
      // Without names the paper counts pieces alone.
      if (own === undefined || own.names.length === 0) return [];
      const sizes = blanks[line.blankId]?.sizes.map(({ name }) => name) ?? [];
      const words = nameCountWords(compareCounts(own.names, line.quantities, sizes), formatter);
      return words === null ? [] : [`${line.name}: ${words}`];
    }),
  );
}
