import type { HourRow } from '@/lib/year/hourRows';
import type { YearRow } from '@/lib/year/yearRow';
import type { YearStanding } from '@/lib/year/yearStanding';

/** An entry that can be taken back where the year is looked at. */
export interface ListedEntry {
  readonly row: HourRow | Extract<YearRow, { readonly flow: 'expense' }>;
  /** As it was noted. */
  readonly what: string;
}

/** @returns expenses and hours that were noted by hand, the last day first: closes and deliveries have their own places. */
export const listedEntries = ({
  rows,
  hours,
}: Pick<YearStanding, 'rows' | 'hours'>): readonly ListedEntry[] =>
  [
    ...rows.flatMap((row) =>
      row.flow === 'expense' && (row.about.kind === 'workshop' || row.about.kind === 'order')
        ? [{ row, what: row.what }]
        : [],
    ),
    ...hours.flatMap((row) => (row.from === 'noted' ? [{ row, what: row.note }] : [])),
  ].toSorted((one, other) => (one.row.day < other.row.day ? 1 : one.row.day > other.row.day ? -1 : 0));
