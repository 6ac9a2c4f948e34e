import type { Approval } from '@/shared/schemas/entries';
import { clubEventDay } from './clubEventDay';
import { clubOrder } from './clubOrder';
import { fairMugs, fairShirts } from './fairJobs';

/** Approvals are the same on every day; a day is needed to make the jobs. */
const ANY_DAY = '2026-11-25';

/** @returns what customers have said yes to in the jobs of `exampleDocuments`. */
export const exampleApprovals = (): readonly { readonly kind: 'approval'; readonly body: Approval }[] =>
  [clubOrder(ANY_DAY, clubEventDay(ANY_DAY)), fairShirts(ANY_DAY), fairMugs(ANY_DAY)].flatMap(
    ({ approvedVersions }) =>
      Object.entries(approvedVersions).map(
        ([artworkId, version]) => ({ kind: 'approval', body: { artworkId, version } }) as const,
      ),
  );
