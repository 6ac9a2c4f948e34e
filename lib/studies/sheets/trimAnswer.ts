import { costInput } from '@/lib/costing/costInput';
import { scaledToShown } from '@/lib/drafts/trimEdges';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { ownEntry } from '@/lib/job/ownEntry';
import type { JobInput } from '@/shared/schemas/request';

interface TrimAnswer {
  /** Sheets printed less, expected; below 0 where it takes more. */
  readonly sheetsLess: number;
  /** Full cost of the whole job less, currency units, unrounded. */
  readonly saved: number;
}

/**
 * What trimming the clear edges of a picture would save in a job: the whole job is costed again.
 *
 * @returns null where a stop stands, before or after, or there is nothing to trim
 */
export function trimAnswer(
  input: JobInput,
  grid: Grid,
  { artworkId }: { readonly artworkId: string },
): TrimAnswer | null {
  const artwork = ownEntry(input.artworks, artworkId);
  const picture = artwork?.picture ?? null;
  if (artwork === undefined || picture === null || picture.trimmed || picture.content === null) return null;
  const trimmed = { ...picture, trimmed: true };
  const before = costInput(input, grid);
  const after = costInput(
    {
      ...input,
      artworks: { ...input.artworks, [artworkId]: { ...artwork, picture: trimmed } },
      job: scaledToShown(input.job, artworkId, picture, trimmed),
    },
    grid,
  );
  if (before === null || after === null) return null;
  return {
    sheetsLess: wholeJob(before.sheet, 'sheets') - wholeJob(after.sheet, 'sheets'),
    saved: before.sheet.fullCost - after.sheet.fullCost,
  };
}
