import type { JobInput } from '@/shared/schemas/request';
import { TYPICAL_BLACK_SHARE } from '@/shared/tables/typicalRates';
import { ownEntry } from './ownEntry';

type WithPrinter = Pick<JobInput, 'workshop'> & { readonly job: Pick<JobInput['job'], 'printerId'> };

/** @returns what the job's printer prints of the grey with black, 0–1; the typical share where nobody has said. */
export const blackShareOf = ({ workshop, job }: WithPrinter): number =>
  workshop.printers.find(({ id }) => id === job.printerId)?.blackShare?.value ?? TYPICAL_BLACK_SHARE;

/** @returns whether any ink of the job was read from pixels and has grey in it: all other ink is as it was typed. */
export const needsBlackShare = ({ job, artworks }: Pick<JobInput, 'job' | 'artworks'>): boolean =>
  job.lines.some(({ placements }) =>
    placements.some(({ artworkId }) => {
      const artwork = ownEntry(artworks, artworkId);
      return artwork?.coverage === null && (artwork.picture?.coverage.black ?? 0) > 0;
    }),
  );
