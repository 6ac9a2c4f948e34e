'use client';

import { PageHead } from '@/app/_controls/PageHead';
import { useJobFields } from '@/app/_docket/common/jobFields';
import { EditableTitle } from '@/app/_fields/EditableTitle';
import { useTextContext } from '@/app/_fields/useTextContext';
import { findingCountWords } from '@/app/_words/docket/findingCountWords';
import { jobInWords } from '@/app/_words/docket/jobWords';
import { formatterFor } from '@/app/_words/formatter';
import type { Finding } from '@/shared/finding';

type JobHeadProps = Readonly<{
  /** Null while the first check is under way; a word for that would be gone before it is read. */
  findings: readonly Finding[] | null;
}>;

const LONGEST_NAME = 120;

/** The name of the job, what it is in one line, and what the check says in another. */
export function JobHead({ findings }: JobHeadProps) {
  const { input, field } = useJobFields();
  const formatter = formatterFor(useTextContext());
  const { onCommit } = field('Name of the job', ['name']);
  return (
    <PageHead
      title={
        <EditableTitle
          label="Name of the job"
          value={input.job.name}
          longest={LONGEST_NAME}
          onCommit={onCommit}
        />
      }
      line={jobInWords(input, formatter)}
      aside={<p role="status">{findings === null ? '\u00a0' : `Checked: ${findingCountWords(findings)}`}</p>}
    />
  );
}
