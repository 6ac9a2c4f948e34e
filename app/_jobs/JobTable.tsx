'use client';

import type { JobRecord } from '@/app/_documents/documentsByKind';
import type { findingWords } from '@/app/_words/findings/findingWords';
import type { JobFigures } from '@/lib/costing/jobFigures';
import type { Workshop } from '@/shared/schemas/workshop';
import { JobRow } from './JobRow';
import styles from './JobTable.module.css';
import { firstOrder, type JobEntry, type JobSort, type JobSortBy } from './jobEntries';
import type { JobActions } from './useJobActions';

type JobTableProps = Readonly<{
  entries: readonly JobEntry[];
  sort: JobSort;
  onSort: (sort: JobSort) => void;
  figuresOf: (kept: JobRecord) => JobFigures | null;
  /** Null until the words of findings are here. */
  sayStop: typeof findingWords | null;
  actions: JobActions;
  workshop: Workshop;
}>;

const headings: readonly { readonly by: JobSortBy; readonly label: string; readonly isFigure?: true }[] = [
  { by: 'name', label: 'job' },
  { by: 'customer', label: 'customer' },
  { by: 'state', label: 'state' },
  { by: 'wanted', label: 'wanted' },
  { by: 'pieces', label: 'pieces', isFigure: true },
  { by: 'price', label: 'price', isFigure: true },
  { by: 'margin', label: 'margin', isFigure: true },
  { by: 'pay', label: 'pays an hour', isFigure: true },
];

/** The jobs in rows, on a phone in cards; a heading sorts by its column, and turns the order round when it does so already. */
export function JobTable({ entries, sort, onSort, figuresOf, sayStop, actions, workshop }: JobTableProps) {
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          {headings.map(({ by, label, isFigure }) => (
            <th
              key={by}
              className={isFigure && styles.figure}
              scope="col"
              aria-sort={sort.by === by ? (sort.down ? 'descending' : 'ascending') : undefined}
            >
              <button
                className={styles.sort}
                type="button"
                onClick={() => onSort(sort.by === by ? { by, down: !sort.down } : firstOrder(by))}
              >
                {/* The words end where their figures do: the room for the arrow is before them. */}
                {isFigure && <Arrow turned={sort.by === by ? sort : null} />}
                {label}
                {!isFigure && <Arrow turned={sort.by === by ? sort : null} />}
              </button>
            </th>
          ))}
          <th scope="col">
            <span className="visuallyHidden">what to do with it</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {entries.map((entry) => (
          <JobRow
            key={entry.kept.id}
            entry={entry}
            figures={figuresOf(entry.kept)}
            {...{ sayStop, actions, workshop }}
          />
        ))}
      </tbody>
    </table>
  );
}

// Helpers

/** Which way a heading sorts; its room is kept where it does not. */
const Arrow = ({ turned }: Readonly<{ turned: JobSort | null }>) => (
  <svg className={styles.arrow} viewBox="0 0 10 8" aria-hidden="true" focusable="false">
    {turned !== null && <path d={turned.down ? 'M1 1h8L5 7z' : 'M1 7h8L5 1z'} />}
  </svg>
);
