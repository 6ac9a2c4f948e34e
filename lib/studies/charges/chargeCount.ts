import type { Job } from '@/shared/schemas/job';
import { wantedPieces } from '@/shared/wantedPieces';

/** For one piece, a name, folding, splitting, a late change, and rush. */
const ALWAYS = 6;

/**
 * How many charges there are around the pieces of a job, known before any of them is worked out: beside those of
 * every job one for each design, each product's sample, each print where there are several, and the delivery.
 */
export function chargeCount({ lines, madeFor, deliveryKm }: Job): number {
  const made = lines.filter((line) => wantedPieces([line]) > 0);
  const prints = made.flatMap(({ placements }) => placements);
  const designs = new Set(prints.map(({ artworkId }) => artworkId)).size;
  const several = made.reduce(
    (sum, { placements }) => sum + (placements.length < 2 ? 0 : placements.length),
    0,
  );
  const brought = madeFor === 'order' && deliveryKm !== null ? 1 : 0;
  return ALWAYS + designs + made.length + several + brought;
}
