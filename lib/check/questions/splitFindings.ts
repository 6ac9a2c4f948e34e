import { ownEntry } from '@/lib/job/ownEntry';
import type { Change, Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import type { Question } from './question';

/** Findings of a job as a screen shows them: what is a risk, and what is only to be told. */
export function splitFindings(
  findings: readonly Finding[],
  input: JobInput,
): { readonly risks: readonly Finding[]; readonly questions: readonly Question[] } {
  const put = findings.map((finding) => ({ finding, asked: findingQuestion(finding, input) }));
  return {
    risks: put.flatMap(({ finding, asked }) => (asked === null ? [finding] : [])),
    questions: put.flatMap(({ asked }) => (asked === null || asked === 'told' ? [] : [asked])),
  };
}

// Helpers

/**
 * A finding that says no more than that nobody has told yet, put as a question. The finding itself stays in the
 * answer of the check; a screen that can ask shows the question in its stead.
 *
 * @param input the documents as they stand now, which may be newer than the finding
 * @returns null for a risk of the job, which no answer of one word takes away; `told` once the documents say it
 */
function findingQuestion(finding: Finding, input: JobInput): Question | 'told' | null {
  switch (finding.id) {
    case 'RATE-01':
      if (finding.variant === 'noFreight') {
        const typical = finding.fix?.label === 'useTypical' ? finding.fix.changes : null;
        return input.job.freightIn === null ? freight(typical ?? finding.where, input.asOf) : 'told';
      }
      if (finding.variant !== 'noDrive') return null;
      return input.job.deliveryKm === null ? delivery : 'told';
    case 'LAW-05': {
      const [, index] = finding.where.path;
      const channel = typeof index === 'number' ? input.workshop.channels[index] : undefined;
      return channel?.taxMode === null ? tax(channel.name, finding.where.path) : 'told';
    }
    case 'ART-14': {
      const { id } = finding.where;
      const rights = id === undefined ? undefined : ownEntry(input.artworks, id)?.rights;
      if (finding.variant !== 'notStated' || id === undefined) return null;
      if (rights?.state !== 'notStated') return 'told';
      // A note is an answer, “not sure” among them: from then on it is the risk of this job.
      return rights.note === '' ? owner(finding.facts.artwork, id) : null;
    }
    default:
      return null;
  }
}

const freight = (yes: Question['yes'], date: string): Question => ({
  id: 'freight',
  of: '',
  yes,
  no: job('freightIn', { value: 0, unit: 'money/order', date, origin: 'yours' }),
  unsure: null,
});

/** How far it is only the maker knows. Nobody drives: the minutes of handing it over or posting it still count. */
const delivery: Question = {
  id: 'delivery',
  of: '',
  yes: { document: 'job', path: ['deliveryKm'] },
  no: [{ document: 'job', path: ['deliveryKm'], value: 0 }],
  unsure: null,
};

function tax(of: string, path: Change['path']): Question {
  const write = (value: string): readonly Change[] => [{ document: 'workshop', path, value }];
  return { id: 'taxInside', of, yes: write('inside'), no: write('added'), unsure: write('none') };
}

function owner(of: string, id: string): Question {
  const write = (key: 'state' | 'note', value: string): readonly Change[] => [
    { document: 'artwork', id, path: ['rights', key], value },
  ];
  return {
    id: 'pictureOwner',
    of,
    yes: write('state', 'own'),
    no: write('state', 'permission'),
    unsure: write('note', 'not sure'),
  };
}

const job = (field: string, value: unknown): readonly Change[] => [{ document: 'job', path: [field], value }];
