'use client';

import { PartGone } from './PartGone';
import { TryAgain } from './TryAgain';
import type { Fetched } from './useLazy';

type PartMissingProps = Readonly<{
  /** “The figures”. */
  what: string;
  /** What can be done without it, as a sentence. */
  meanwhile?: string;
  missing: Extract<Fetched<unknown>, { readonly kind: 'missing' }>;
}>;

/** Stands where a part of the page could not be fetched. */
export function PartMissing({ what, meanwhile, missing }: PartMissingProps) {
  if (missing.isGone)
    return (
      <PartGone>
        {what} could not be fetched: the server has a newer version, and no longer this part. {meanwhile}
      </PartGone>
    );
  return (
    <TryAgain failure={missing} onAgain={missing.again}>
      {what} could not be fetched. {meanwhile} It comes by itself once there is a network.
    </TryAgain>
  );
}
