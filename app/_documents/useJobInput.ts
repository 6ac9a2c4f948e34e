'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import type { JobInput } from '@/shared/schemas/request';
import type { DocumentsByKind } from './documentsByKind';
import type { Noted } from './useNoted';

/** The documents one job is priced from; the same object while none of them changes. */
export function useJobInput(documents: DocumentsByKind & Noted, jobId: string): JobInput | null {
  const { workshop, blanks, artworks, jobs, onHand, approvedVersions } = documents;
  const job = jobs.find(({ id }) => id === jobId)?.job ?? null;
  const asOf = useToday();
  return useMemo(
    () =>
      workshop === null || job === null
        ? null
        : { asOf, workshop, blanks, artworks, job, onHand, approvedVersions },
    [asOf, workshop, blanks, artworks, job, onHand, approvedVersions],
  );
}
