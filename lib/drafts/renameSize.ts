import type { Job, Line } from '@/shared/schemas/job';

/** A size of a blank that gets a new name. */
interface SizeRename {
  readonly blankId: string;
  readonly from: string;
  readonly to: string;
}

/**
 * Follows the new name of a size through a job: quantities, up-charges and the sizes of its prints.
 *
 * @returns the same job where it does not name the size
 */
export function renameSize(job: Job, change: SizeRename): Job {
  const lines = job.lines.map((line) => (line.blankId === change.blankId ? renamedLine(line, change) : line));
  return lines.every((line, index) => line === job.lines[index]) ? job : { ...job, lines };
}

function renamedLine(line: Line, { from, to }: SizeRename): Line {
  const renamed = <Entry extends { readonly size: string }>(entries: readonly Entry[]): Entry[] =>
    entries.map((entry) => (entry.size === from ? { ...entry, size: to } : entry));
  const isNamed =
    [...line.quantities, ...line.upCharges].some(({ size }) => size === from) ||
    line.placements.some(({ prints }) => prints.some(({ sizes }) => sizes?.includes(from)));
  if (!isNamed) return line;
  return {
    ...line,
    quantities: renamed(line.quantities),
    upCharges: renamed(line.upCharges),
    placements: line.placements.map((placement) => ({
      ...placement,
      prints: placement.prints.map((print) => ({
        ...print,
        sizes: print.sizes?.map((size) => (size === from ? to : size)) ?? null,
      })),
    })),
  };
}
