'use client';

import type { Finding } from '@/shared/finding';
import { textLimits } from '@/shared/limits';
import { jobSchema } from '@/shared/schemas/job';
import { useTextContext } from '../_fields/useTextContext';
import { PageHead } from '../_shell/PageHead';
import { speakerOf } from '../_text/speaker';
import { EditableTitle } from './EditableTitle';
import { findingsInWords } from './findingsInWords';
import { useJobDesk } from './jobDesk';
import { jobInWords } from './jobWords';

type JobHeadProps = Readonly<{
  /** Null while the first check is under way; a word for that would be gone before it is read. */
  findings: readonly Finding[] | null;
}>;

/** The name of the job, what it is in one line, and what the check says in another. */
export function JobHead({ findings }: JobHeadProps) {
  const { input, field } = useJobDesk();
  const speak = speakerOf(useTextContext());
  const { onCommit } = field('Name of the job', ['name']);
  return (
    <PageHead
      title={
        <EditableTitle
          label="Name of the job"
          value={input.job.name}
          limits={textLimits(jobSchema, ['name'])}
          onCommit={onCommit}
        />
      }
      line={jobInWords(input, speak)}
      aside={<p role="status">{findings === null ? '\u00a0' : `Checked: ${findingsInWords(findings)}`}</p>}
    />
  );
}
