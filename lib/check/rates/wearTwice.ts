import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';

/** RATE-07: the yearly overhead already pays for worn machines, and the job is charged for wear as well. */
export const wearRule: Rule = ({ resolved }) => {
  if (!resolved.workshop.policy.wearInOverhead) return [];
  const machines = [
    resolved.printer,
    ...resolved.lines.flatMap(({ placements }) => placements.map(({ press }) => press)),
  ];
  const worn = machines.find(({ price, resale }) => price.value > resale.value);
  if (worn === undefined) return [];
  return [
    makeFinding({
      id: 'RATE-07',
      severity: 'caution',
      where: { document: 'workshop', path: ['policy', 'wearInOverhead'] },
      facts: { machine: worn.name },
      fix: {
        label: 'wearByUse',
        facts: {},
        changes: [{ document: 'workshop', path: ['policy', 'wearInOverhead'], value: false }],
      },
    }),
  ];
};
