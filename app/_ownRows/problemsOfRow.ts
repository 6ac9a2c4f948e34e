import type { Finding } from '@/shared/finding';
import type { OwnRow } from '@/shared/schemas/ownRow';

/** @returns the findings that speak of one own row: its formula cannot be read, leads in a circle, or gives an error. */
export function problemsOfRow(
  findings: readonly Finding[],
  row: OwnRow,
  of: 'job' | 'workshop',
  index: number,
): readonly Finding[] {
  return findings.filter(({ id, where, facts }) => {
    if (id === 'ROW-03') return facts.label === row.label;
    if (id !== 'ROW-01' && id !== 'ROW-02') return false;
    return where.document === of && where.path[0] === 'ownRows' && where.path[1] === index;
  });
}
