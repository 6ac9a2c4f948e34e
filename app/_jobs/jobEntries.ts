import type { JobRecord } from '@/app/_documents/documentsByKind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { askedWords, piecesOfJob } from '@/app/_words/jobs/jobListWords';
import type { JobFigures } from '@/lib/costing/jobFigures';
import { jobFacts } from '@/lib/drafts/jobFacts';
import { isFound, searchText } from '@/lib/drafts/jobSearch';
import { type JobState, jobStates } from '@/shared/schemas/job';

/** A job as the list shows it, but for its figures. */
export interface JobEntry {
  readonly kept: JobRecord;
  readonly pieces: number;
  readonly piecesInWords: string;
  /** Lowest asked price; null where none is decided. */
  readonly asked: number | null;
  readonly askedInWords: string | null;
  readonly text: string;
}

/** @returns the jobs as the list shows them, last changed first. */
export function jobEntries({
  jobs,
  blanks,
  artworks,
  workshop,
}: Pick<ReadyWorkspace, 'jobs' | 'blanks' | 'artworks' | 'workshop'>): readonly JobEntry[] {
  const formatter = formatterFor(workshop);
  return jobs.map((kept) => {
    const { pieces, asked } = jobFacts(kept.job);
    return {
      kept,
      pieces,
      piecesInWords: piecesOfJob(kept.job, blanks, formatter),
      asked: asked?.from ?? null,
      askedInWords: askedWords(kept.job, workshop),
      text: searchText(kept.job, { blanks, artworks }),
    };
  });
}

/** Which jobs are looked at. */
export interface JobsWanted {
  readonly search: string;
  /** Null for every state. */
  readonly state: JobState | null;
  /** Whether those put away are looked at too. */
  readonly away: boolean;
}

interface FoundJobs {
  readonly found: readonly JobEntry[];
  /** How many of what is searched for stand in each state; before one is chosen. */
  readonly byState: Readonly<Record<JobState, number>>;
  readonly inAnyState: number;
  /** How many more would be found among those put away. */
  readonly moreAway: number;
}

/** @returns the jobs that are looked at, in the order given. */
export function findJobs(entries: readonly JobEntry[], { search, state, away }: JobsWanted): FoundJobs {
  const searched = search.trim() === '' ? entries : entries.filter(({ text }) => isFound(text, search));
  const inList = away ? searched : searched.filter(({ kept }) => kept.job.archivedOn === null);
  const inState = (list: readonly JobEntry[], wanted: JobState) =>
    list.filter(({ kept }) => kept.job.state === wanted);
  return {
    found: state === null ? inList : inState(inList, state),
    byState: {
      draft: inState(inList, 'draft').length,
      quoted: inState(inList, 'quoted').length,
      agreed: inState(inList, 'agreed').length,
      done: inState(inList, 'done').length,
    },
    inAnyState: inList.length,
    moreAway:
      (state === null ? searched : inState(searched, state)).length -
      (state === null ? inList : inState(inList, state)).length,
  };
}

export type JobSortBy =
  | 'changed'
  | 'name'
  | 'customer'
  | 'wanted'
  | 'pieces'
  | 'price'
  | 'margin'
  | 'pay'
  | 'state';

export interface JobSort {
  readonly by: JobSortBy;
  /** From the greatest down. */
  readonly down: boolean;
}

/** @returns the order a heading begins with: words from A on, the next day first, money from the most down. */
export const firstOrder = (by: JobSortBy): JobSort => ({
  by,
  down: by === 'pieces' || by === 'price' || by === 'margin' || by === 'pay',
});

/** @returns the jobs in the order asked for; what is not known yet, or is not there, always comes last. */
export function sortJobs(
  entries: readonly JobEntry[],
  { by, down }: JobSort,
  figuresOf: (entry: JobEntry) => JobFigures | null,
  locale: string,
): readonly JobEntry[] {
  if (by === 'changed') return down ? entries.toReversed() : entries;
  const collator = new Intl.Collator(locale, { sensitivity: 'base', numeric: true });
  const keyed = entries.map((entry) => ({ entry, key: keyOf(entry, by, figuresOf(entry)) }));
  return keyed
    .toSorted((one, other) => {
      if (one.key === null || other.key === null)
        return Number(one.key === null) - Number(other.key === null);
      const order =
        typeof one.key === 'number' && typeof other.key === 'number'
          ? one.key - other.key
          : collator.compare(String(one.key), String(other.key));
      return down ? -order : order;
    })
    .map(({ entry }) => entry);
}

// Helpers

function keyOf(
  { kept: { job }, pieces, asked }: JobEntry,
  by: Exclude<JobSortBy, 'changed'>,
  figures: JobFigures | null,
): string | number | null {
  switch (by) {
    case 'name':
      return job.name;
    case 'customer':
      return job.customer === '' ? null : job.customer;
    case 'wanted':
      return job.wantedOn;
    case 'pieces':
      return pieces;
    case 'price':
      return asked;
    case 'margin':
      return figures?.kind === 'priced' ? figures.margin : null;
    case 'pay':
      return figures?.kind === 'priced' ? figures.payPerHour : null;
    case 'state':
      return jobStates.indexOf(job.state);
    default:
      return by satisfies never;
  }
}
