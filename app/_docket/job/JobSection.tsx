'use client';

import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { usePrefetchArtwork } from '@/app/_docket/artwork/usePrefetchArtwork';
import { useJob } from '@/app/_docket/common/useJob';
import { newId } from '@/app/_documents/newId';
import { mostEntries } from '@/shared/limits';
import { type Job, jobSchema } from '@/shared/schemas/job';
import { JobMore } from './JobMore';
import styles from './JobSection.module.css';
import { LineEditor } from './LineEditor';
import { newLine } from './newLine';

/** Section 1: what is made, of what, how many, and how each print is pressed. */
export function JobSection() {
  const { jobId, input, workspace } = useJob();
  const { lines } = input.job;
  const most = mostEntries(jobSchema, ['lines']);
  usePrefetchArtwork();
  const addLine = () =>
    workspace.changeJob(jobId, 'Added line', (job: Job) => ({
      ...job,
      lines: [...job.lines, newLine(job.lines, newId)],
    }));
  return (
    <CardSection numeral={1} heading="The job" id="the-job">
      <div className={styles.lines}>
        {lines.map((line, index) => (
          <LineEditor
            key={line.id}
            line={line}
            index={index}
            after={
              index === lines.length - 1 && (
                <Button
                  kind="quiet"
                  onPress={addLine}
                  blockedBy={lines.length < most ? undefined : `A job has ${most} lines at most.`}
                >
                  Add another product to this job
                </Button>
              )
            }
          />
        ))}
      </div>
      <div className={styles.more}>
        <JobMore />
      </div>
    </CardSection>
  );
}
