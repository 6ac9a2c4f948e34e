import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import type { Formatter } from '@/app/_words/formatter';
import type { JobSheetFacts } from '@/lib/jobSheet/jobSheet';
import type { JobStep } from '@/lib/papers/bodies/jobSheetPaper';
import type { TickGrid } from '@/lib/papers/paper';
import { apart } from '@/lib/papers/words/labelsFor';
import { grouped } from '@/shared/grouped';

type Size = JobSheetFacts['lines'][number]['sizes'][number];

/** Spares that several lines share stand in a stack of their own; all others lie on that of their line. */
export const stackOf = ({ wanted, take, isShared }: Pick<Size, 'wanted' | 'take' | 'isShared'>): number =>
  isShared ? wanted : take;

/** Spares that designs share, told once for all of them, with room to count those that are taken. */
export function sharedTally(shared: JobSheetFacts['shared'], { number }: Formatter): JobStep['tally'] {
  const names = new Set(shared.flatMap(({ of }) => of.map(({ blankName }) => blankName)));
  const [name = ''] = names;
  const some = shared.filter(({ spares }) => spares > 0);
  if (some.length === 0) return { words: '', labels: [] };
  return {
    words: names.size === 1 ? jobSheetTable.sharedOf(apart(name)) : jobSheetTable.shared,
    labels: some.map(({ size, spares, of }) =>
      [...(names.size === 1 ? [] : [apart(of[0]?.blankName ?? '')]), apart(size), number(spares)].join(' '),
    ),
  };
}

/** The same under a table of lines by size, a row a blank. */
export function sharedRows(
  shared: JobSheetFacts['shared'],
  sizes: readonly string[],
  { number }: Formatter,
): TickGrid['rows'] {
  const nameOf = ({ of }: (typeof shared)[number]) => of[0]?.blankName ?? '';
  const blanks = [...grouped(shared, nameOf)];
  return blanks.map(([name, stacks]) => ({
    name: jobSheetTable.sparesOf(name),
    ticks: sizes.map((size) => {
      const spares = stacks.find((one) => one.size === size)?.spares ?? 0;
      return spares === 0 ? '' : number(spares);
    }),
    last: number(stacks.reduce((sum, { spares }) => sum + spares, 0)),
  }));
}

/** @returns a size with the spares of it that all lines share: 'L +3' */
export function sizeAndSpares(size: string, shared: JobSheetFacts['shared'], { number }: Formatter): string {
  const spares = shared.find((one) => one.size === size)?.spares ?? 0;
  return spares === 0 ? size : `${size} +${number(spares)}`;
}
