'use client';

import { useId } from 'react';
import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { Finder } from '@/app/_fields/Finder';
import type { Formatter } from '@/app/_words/formatter';
import { jobStateChoices } from '@/app/_words/jobs/jobListWords';
import type { JobState } from '@/shared/schemas/job';
import styles from './JobFinder.module.css';
import { type findJobs, firstOrder, type JobSort, type JobSortBy, type JobsWanted } from './jobEntries';

type JobFinderProps = Readonly<{
  wanted: JobsWanted;
  found: ReturnType<typeof findJobs>;
  sort: JobSort;
  /** How many jobs are put away in all. */
  awayCount: number;
  onWanted: (wanted: JobsWanted) => void;
  onSort: (sort: JobSort) => void;
  formatter: Formatter;
}>;

const sortWords: readonly { readonly value: JobSortBy; readonly label: string }[] = [
  { value: 'changed', label: 'last changed' },
  { value: 'name', label: 'name' },
  { value: 'customer', label: 'customer' },
  { value: 'wanted', label: 'day wanted' },
  { value: 'pieces', label: 'pieces' },
  { value: 'price', label: 'price' },
  { value: 'margin', label: 'margin' },
  { value: 'pay', label: 'pay an hour' },
  { value: 'state', label: 'state' },
];

/** @returns where the button stands that narrows the list to a state. */
export const stateFilterId = (state: JobState | null): string => `jobs-${state ?? 'all'}`;

/** Which jobs are listed, and in what order. */
export function JobFinder({ wanted, found, sort, awayCount, onWanted, onSort, formatter }: JobFinderProps) {
  const id = useId();
  const isSearching = wanted.search.trim() !== '';
  const isNarrowed = isSearching || wanted.state !== null;
  const tabs = [
    { state: null, label: 'All', count: found.inAnyState },
    ...jobStateChoices.map(({ value, label }) => ({ state: value, label, count: found.byState[value] })),
  ];
  return (
    <div className={styles.finder}>
      <Finder
        id={id}
        label="Find a job, customer, blank or artwork"
        text={wanted.search}
        onText={(search) => onWanted({ ...wanted, search })}
        also={
          awayCount > 0 || wanted.away
            ? {
                words: `Put away too, ${formatter.number(awayCount)}`,
                isShown: wanted.away,
                onShown: (away) => onWanted({ ...wanted, away }),
              }
            : null
        }
        below={
          <div className={styles.row}>
            {/* biome-ignore lint/a11y/useSemanticElements: these are buttons, and a fieldset is for what is typed */}
            <div className={styles.tabs} role="group" aria-label="State">
              {tabs.map(({ state, label, count }) => (
                <button
                  key={label}
                  id={stateFilterId(state)}
                  className={styles.tab}
                  type="button"
                  aria-pressed={wanted.state === state}
                  onClick={() => onWanted({ ...wanted, state })}
                >
                  {label} <span>{formatter.number(count)}</span>
                </button>
              ))}
            </div>
            <div className={styles.sorted}>
              <ChoiceField
                label="Sorted by"
                value={sort.by}
                choices={sortWords}
                onCommit={(by) => onSort(firstOrder(by))}
              />
            </div>
          </div>
        }
        result={
          <>
            {isNarrowed &&
              `${found.found.length === 0 ? 'No job' : formatter.count(found.found.length, 'job')} found`}
            {isSearching && found.moreAway > 0 && (
              <>
                , {formatter.number(found.moreAway)}
                {found.found.length > 0 && ' more'} among those put away
              </>
            )}
          </>
        }
      >
        {isSearching && found.moreAway > 0 && (
          <Button kind="quiet" onPress={() => onWanted({ ...wanted, away: true })}>
            Show {found.moreAway === 1 ? 'it' : 'them'} too
          </Button>
        )}
        {found.found.length === 0 && found.moreAway === 0 && isNarrowed && (
          <Button kind="quiet" onPress={() => onWanted({ ...wanted, search: '', state: null })}>
            Show all jobs
          </Button>
        )}
      </Finder>
    </div>
  );
}
