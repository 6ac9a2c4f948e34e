'use client';

import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { type FoldOfRow, FoldRow } from '@/app/_controls/FoldRow';
import { usePrefetchArtwork } from '@/app/_docket/artwork/usePrefetchArtwork';
import { fieldId } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { newId } from '@/app/_documents/newId';
import { useTextContext } from '@/app/_fields/useTextContext';
import { jobAnswerWords } from '@/app/_words/docket/jobAnswerWords';
import { formatterFor } from '@/app/_words/formatter';
import { withCopyOfLine } from '@/lib/drafts/withCopyOfLine';
import { mostEntries } from '@/shared/limits';
import { type Job, jobSchema, type Line } from '@/shared/schemas/job';
import { JobMore, jobMoreFields } from './JobMore';
import styles from './JobSection.module.css';
import { LineEditor } from './LineEditor';
import { newLine } from './newLine';

/** Section 1: what is made, of what, how many, and how each print is pressed. */
export function JobSection() {
  const { jobId, input, workspace } = useJob();
  const formatter = formatterFor(useTextContext());
  const { lines } = input.job;
  const most = mostEntries(jobSchema, ['lines']);
  const blockedBy = lines.length < most ? undefined : `A job has ${most} lines at most.`;
  usePrefetchArtwork();
  const addLine = () =>
    workspace.changeJob(jobId, 'Added line', (job: Job) => ({
      ...job,
      lines: [...job.lines, newLine(job.lines, newId)],
    }));
  const duplicate = ({ id, name }: Line) =>
    workspace.changeJob(jobId, `Duplicated ${name}`, (job) => withCopyOfLine(job, id, newId));
  const { strong, rest } = jobAnswerWords(input, formatter);
  const jobFold: FoldOfRow = {
    id: 'more',
    fieldId: fieldId(['more']),
    name: 'Customer and date',
    holds: jobMoreFields.map((key) => fieldId([key])),
    body: () => <JobMore />,
  };
  const isOne = lines.length === 1;
  return (
    <CardSection
      numeral={1}
      heading="The job"
      answer={
        <>
          <strong>{strong}</strong>
          {rest}
        </>
      }
      id="the-job"
    >
      <div className={styles.lines}>
        {lines.map((line, index) => (
          <LineEditor
            key={line.id}
            line={line}
            index={index}
            folds={isOne ? [jobFold] : []}
            after={
              <>
                <Button
                  kind="quiet"
                  spoken={`Duplicate ${line.name}`}
                  onPress={() => duplicate(line)}
                  blockedBy={blockedBy}
                >
                  Duplicate
                </Button>
                {isOne && <AddLine onPress={addLine} blockedBy={blockedBy} />}
              </>
            }
          />
        ))}
      </div>
      {!isOne && (
        <div className={styles.more}>
          <FoldRow
            place={jobId}
            folds={[jobFold]}
            after={<AddLine onPress={addLine} blockedBy={blockedBy} />}
          />
        </div>
      )}
    </CardSection>
  );
}

// Helpers

type AddLineProps = Readonly<{ onPress: () => void; blockedBy: string | undefined }>;

function AddLine({ onPress, blockedBy }: AddLineProps) {
  return (
    <Button kind="quiet" onPress={onPress} blockedBy={blockedBy}>
      Another product
    </Button>
  );
}
