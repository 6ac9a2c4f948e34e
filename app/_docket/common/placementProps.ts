import type { Placement } from '@/shared/schemas/job';

/** What every part of a placement's fold is given. */
export type PlacementProps = Readonly<{
  placement: Placement;
  /** Its path in the job. */
  path: readonly (string | number)[];
}>;
