import type { Change, Finding } from '@/shared/finding';

/**
 * Findings that say the same of several placements, as of three lines of one mug, become one: it points at the first,
 * and its button mends them all.
 */
export function toldOnce(findings: readonly Finding[]): readonly Finding[] {
  const told = new Map<string, Finding>();
  for (const finding of findings) {
    const key = saysOf(finding);
    const before = told.get(key);
    told.set(key, before === undefined ? finding : withChanges(before, finding.fix?.changes ?? []));
  }
  return [...told.values()];
}

const saysOf = ({ id, severity, variant, facts, fix }: Finding): string =>
  JSON.stringify([id, severity, variant, facts, fix?.label, fix?.facts]);

function withChanges(finding: Finding, more: readonly Change[]): Finding {
  if (finding.fix === null) return finding;
  const { changes } = finding.fix;
  const fieldOf = ({ document, id, path }: Change) => JSON.stringify([document, id, path]);
  const fields = changes.map(fieldOf);
  const others = more.filter((change) => !fields.includes(fieldOf(change)));
  return { ...finding, fix: { ...finding.fix, changes: [...changes, ...others] } };
}
