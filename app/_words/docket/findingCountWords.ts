import { type Finding, isStanding } from '@/shared/finding';

/** @returns how many findings of each kind there are: “no stops, 2 cautions, 4 notes”. */
export function findingCountWords(findings: readonly Finding[]): string {
  if (findings.length === 0) return 'nothing to mend';
  const stops = findings.filter(isStanding).length;
  const passed = findings.filter(({ waivedBecause }) => waivedBecause !== undefined).length;
  const of = (severity: Finding['severity']) =>
    findings.filter((finding) => finding.severity === severity).length;
  return [
    stops > 0 && counted(stops, 'stop'),
    passed > 0 && `${counted(passed, 'stop')} passed with a reason`,
    of('caution') > 0 && counted(of('caution'), 'caution'),
    of('note') > 0 && counted(of('note'), 'note'),
    stops === 0 && passed === 0 && 'no stops',
  ]
    .filter((part) => part !== false)
    .join(', ');
}

const counted = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;
