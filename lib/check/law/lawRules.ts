import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { textileKinds } from '@/shared/schemas/blank';

/** LAW-01: the sewn label stays in place and readable. A job that does not say goes by the workshop. Textiles only. */
const sewnLabel: Rule = ({ resolved }) => {
  const { job, lines, workshop } = resolved;
  const label = job.sewnLabel === 'unknown' ? workshop.habits.sewnLabel : job.sewnLabel;
  if (label === null || label === 'kept') return [];
  if (!lines.some(({ blank }) => textileKinds.includes(blank.kind))) return [];
  return [
    makeFinding({
      id: 'LAW-01',
      severity: 'stop',
      variant: label,
      where: { document: 'job', path: ['sewnLabel'] },
      found: label,
      limit: 'kept',
      facts: {},
      fix: {
        label: 'keepLabel',
        facts: {},
        changes: [{ document: 'job', path: ['sewnLabel'], value: 'kept' }],
      },
    }),
  ];
};

/** LAW-05: whether prices are with or without tax is not yet said. While estimating this is a caution. */
const taxSetting: Rule = ({ resolved }) => {
  const { channel, workshop } = resolved;
  if (channel.taxMode !== null) return [];
  const index = workshop.channels.findIndex(({ id }) => id === channel.id);
  return [
    makeFinding({
      id: 'LAW-05',
      severity: 'caution',
      where: { document: 'workshop', path: ['channels', index, 'taxMode'] },
      facts: { channel: channel.name },
    }),
  ];
};

export const lawRules: readonly Rule[] = [sewnLabel, taxSetting];
