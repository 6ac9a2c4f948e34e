'use client';

import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import type { Finding } from '@/shared/finding';
import type { Job } from '@/shared/schemas/job';
import styles from './WaiveForm.module.css';

type PassedStopProps = Readonly<{ findings: readonly Finding[]; reason: string }>;

/** Stops that the maker passed: the reason as it will be printed, and the way back. */
export function PassedStop({ findings, reason }: PassedStopProps) {
  const { jobId, workspace } = useJob();
  const takeBack = () =>
    workspace.changeJob(jobId, 'Stop again', (job) => ({
      ...job,
      waivers: job.waivers.filter((waiver) => !findings.some((finding) => isPassedBy(finding, waiver))),
    }));
  return (
    <>
      <p className={styles.reason}>
        Passed by you: “{reason}” <span className={styles.quiet}>Printed on the run sheet.</span>
      </p>
      <div className={styles.offer}>
        <Button kind="quiet" onPress={takeBack}>
          Take it back
        </Button>
      </div>
    </>
  );
}

// Helpers

const isPassedBy = ({ id, where }: Finding, waiver: Job['waivers'][number]): boolean =>
  waiver.finding === id &&
  (waiver.lineId === null || waiver.lineId === where.lineId) &&
  (waiver.placementId === null || waiver.placementId === where.placementId);
