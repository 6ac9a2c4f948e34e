'use client';

import { mostEntries } from '@/shared/limits';
import { type Job, jobSchema } from '@/shared/schemas/job';
import { newId } from '../_documents/newId';
import { DocketSection } from '../_figures/DocketSection';
import { Button } from '../_shell/Button';
import { JobMore } from './JobMore';
import styles from './JobSection.module.css';
import { useJobDesk } from './jobDesk';
import { LineEditor } from './LineEditor';
import { newLine } from './newLine';
import { useArtworkAhead } from './useArtworkAhead';

/** Section 1: what is made, of what, how many, and how each print is pressed. */
export function JobSection() {
  const { jobId, input, maker } = useJobDesk();
  const { lines } = input.job;
  const most = mostEntries(jobSchema, ['lines']);
  useArtworkAhead();
  const addLine = () =>
    maker.changeJob(jobId, 'Added line', (job: Job) => ({
      ...job,
      lines: [...job.lines, newLine(job.lines, newId)],
    }));
  return (
    <DocketSection numeral={1} heading="The job" id="the-job">
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
    </DocketSection>
  );
}
