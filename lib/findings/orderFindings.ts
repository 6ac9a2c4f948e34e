import type { Finding, Severity } from '@/shared/finding';
import { findingIds } from '@/shared/tables/findingIds';

const severities: readonly Severity[] = ['stop', 'caution', 'note'];

/** @returns stops first, then cautions, then notes; inside each in the order in which the trade asks. */
export const orderFindings = (findings: readonly Finding[]): readonly Finding[] =>
  findings.toSorted(
    (a, b) =>
      severities.indexOf(a.severity) - severities.indexOf(b.severity) ||
      findingIds.indexOf(a.id) - findingIds.indexOf(b.id),
  );
