'use client';

import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import type { Finding } from '@/shared/finding';
import styles from './WaiveForm.module.css';

/** A stop that the maker passed: the reason as it will be printed, and the way back. */
export function PassedStop({ finding }: Readonly<{ finding: Finding }>) {
  const { jobId, workspace } = useJob();
  const { id, where, waivedBecause } = finding;
  const takeBack = () =>
    workspace.changeJob(jobId, 'Stop again', (job) => ({
      ...job,
      waivers: job.waivers.filter(
        (waiver) =>
          waiver.finding !== id ||
          (waiver.lineId !== null && waiver.lineId !== where.lineId) ||
          (waiver.placementId !== null && waiver.placementId !== where.placementId),
      ),
    }));
  return (
    <>
      <p className={styles.reason}>
        Passed by you: “{waivedBecause}” <span className={styles.quiet}>Printed on the run sheet.</span>
      </p>
      <div className={styles.offer}>
        <Button kind="quiet" onPress={takeBack}>
          Take it back
        </Button>
      </div>
    </>
  );
}
