'use client';

import { PageHead } from '@/app/_controls/PageHead';
import { useJob } from '@/app/_docket/common/useJob';
import { EditableTitle } from '@/app/_fields/EditableTitle';
import { useTextContext } from '@/app/_fields/useTextContext';
import { findingCountWords } from '@/app/_words/docket/findingCountWords';
import { jobInWords } from '@/app/_words/docket/jobWords';
import { formatterFor } from '@/app/_words/formatter';
import { textLimits } from '@/shared/limits';
import { jobSchema } from '@/shared/schemas/job';

/** The name of the job, and whom it is for; what the check says is told to who cannot see the sections. */
export function JobHead() {
  const { input, field, isChecked, findings } = useJob();
  const formatter = formatterFor(useTextContext());
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
      line={jobInWords(input, formatter)}
      // While the first check is under way the line keeps its room; a word there would be gone before it is read.
      aside={
        <p className="visuallyHidden" role="status">
          {isChecked ? `Checked: ${findingCountWords(findings)}` : '\u00a0'}
        </p>
      }
    />
  );
}
