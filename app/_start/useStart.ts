'use client';

import { useMemo, useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { newId } from '@/app/_documents/newId';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { isExampleWorkshop } from '@/lib/examples/isExampleWorkshop';
import { type Region, regionOf } from '@/lib/examples/regionOf';
import { noChoices, type StartChoices } from '@/lib/examples/startChoices';
import { startDocuments, startInput } from '@/lib/examples/startDocuments';
import type { StartIds } from '@/lib/examples/startDraft';
import type { JobInput } from '@/shared/schemas/request';
import { startMemory } from './startMemory';

/** Ids of the first job of a workshop; every further one gets ids of its own. */
const firstIds: StartIds = { job: 'first-job', blank: 'first-blank', artwork: 'first-picture' };

export interface Start {
  readonly choices: StartChoices;
  readonly choose: (answers: Partial<StartChoices>) => void;
  /** Whether the workshop is still the example's, and a start makes one of the maker's own. */
  readonly isFirst: boolean;
  /** The job the answers come to; null until it is said what is made. */
  readonly input: JobInput | null;
  /** Keeps the job, and gives its id; else says why it could not. */
  readonly open: () => Promise<{ readonly jobId: string } | { readonly problem: string }>;
}

/** The answers of a start, kept in the tab, and the job they come to. */
export function useStart(workspace: ReadyWorkspace): Start {
  const { workshop, blanks, artworks, jobs } = workspace;
  const day = useToday();
  const isFirst = isExampleWorkshop(workshop);
  const [choices, setChoices] = useState<StartChoices>(
    () => startMemory.recall() ?? noChoices(regionOf(navigator.language)),
  );
  const [laterIds] = useState<StartIds>(() => ({ job: newId(), blank: newId(), artwork: newId() }));
  // What stands under these ids already, a picture of a removed job too, is not written over.
  const isFree =
    isFirst &&
    jobs.every(({ id }) => id !== firstIds.job) &&
    blanks[firstIds.blank] === undefined &&
    artworks[firstIds.artwork] === undefined;
  const ids = isFree ? firstIds : laterIds;
  const { currency, locale, units } = workshop;
  // A workshop of the maker's own has its money and units already.
  const placed = useMemo(
    () => (isFirst ? choices : { ...choices, region: { currency, locale, units } }),
    [isFirst, choices, currency, locale, units],
  );
  const input = useMemo(
    () => (placed.make === null ? null : startInput(placed.make, placed, day, { workshop, blanks }, ids)),
    [placed, day, workshop, blanks, ids],
  );
  return {
    choices: placed,
    isFirst,
    input,
    choose: (answers) => {
      const next = { ...choices, ...answers };
      startMemory.remember(next);
      setChoices(next);
    },
    open: async () => {
      if (placed.make === null) return { problem: 'Say first what you make.' };
      const exampleAnew =
        isFirst && hasOtherPlace(placed.region, workshop)
          ? (await import('@/lib/examples/exampleDocuments')).exampleDocuments(day, placed.region)
          : null;
      const documents = startDocuments(
        placed.make,
        placed,
        day,
        { workshop, blanks, jobs, exampleAnew },
        ids,
      );
      const label = isFirst ? 'Start of your own workshop' : 'New job';
      const outcome = await workspace.putBeside(label, documents);
      if (outcome.state === 'notKept') return { problem: saveFailureWords[outcome.why] };
      startMemory.remember(null);
      return { jobId: ids.job };
    },
  };
}

/** Whether the example stands in another money, or on another paper, than the one chosen. */
const hasOtherPlace = (chosen: Region, { currency, units }: Region): boolean =>
  chosen.currency !== currency || chosen.units.length !== units.length;
