'use client';

import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { usePrefetchArtwork } from '@/app/_docket/artwork/usePrefetchArtwork';
import { useJobFields } from '@/app/_docket/common/jobFields';
import { newId } from '@/app/_documents/newId';
import type { Job } from '@/shared/schemas/job';
import { JobMore } from './JobMore';
import styles from './JobSection.module.css';
import { LineEditor } from './LineEditor';
import { newLine } from './newLine';

/** What the schema allows. */
const MOST_LINES = 12;

/** Section 1: what is made, of what, how many, and how each print is pressed. */
export function JobSection() {
  const { jobId, input, workspace } = useJobFields();
  const { lines } = input.job;
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
                  blockedBy={lines.length < MOST_LINES ? undefined : `A job has ${MOST_LINES} lines at most.`}
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
