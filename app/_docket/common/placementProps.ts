import type { Placement } from '@/shared/schemas/job';

/** What every part of a placement's fold is given. */
export interface PlacementProps {
  readonly placement: Placement;
  /** Its path in the job. */
  readonly path: readonly (string | number)[];
}
