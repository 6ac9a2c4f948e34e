'use client';

import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { TextField } from '@/app/_fields/TextField';
import type { Finding } from '@/shared/finding';
import { textLimits } from '@/shared/limits';
import { jobSchema } from '@/shared/schemas/job';
import styles from './WaiveForm.module.css';

/** Lets stops that say the same pass for one reason, which is asked for and will be printed. */
export function WaiveForm({ findings }: Readonly<{ findings: readonly Finding[] }>) {
  const { jobId, workspace } = useJob();
  const [isOpen, setOpen] = useState(false);
  const [reason, setReason] = useState('');
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (isOpen) form.current?.querySelector('textarea')?.focus();
  }, [isOpen]);

  if (!isOpen)
    return (
      <div className={styles.offer}>
        <Button kind="quiet" onPress={() => setOpen(true)}>
          Go on in spite of it
        </Button>
      </div>
    );
  const limits = textLimits(jobSchema, ['waivers', 0, 'reason']);
  const isLongEnough = reason.trim().length >= limits.shortest;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!isLongEnough) return;
    workspace.changeJob(jobId, 'Go on in spite of a stop', (job) => ({
      ...job,
      waivers: [
        ...job.waivers,
        ...findings.map(({ id, where }) => ({
          finding: id,
          placementId: where.placementId ?? null,
          lineId: where.lineId ?? null,
          reason: reason.trim(),
        })),
      ],
    }));
  };
  return (
    <form className={styles.form} ref={form} onSubmit={submit}>
      <TextField
        label="Why you go on"
        value={reason}
        rows={2}
        width="full"
        {...limits}
        hint="Your reason is printed on the run sheet."
        onCommit={setReason}
      />
      <div className={styles.acts}>
        <Button
          type="submit"
          kind="strong"
          blockedBy={isLongEnough ? undefined : `A reason has ${limits.shortest} letters at least.`}
        >
          Go on
        </Button>
        <Button kind="quiet" onPress={() => setOpen(false)}>
          Leave it stopped
        </Button>
      </div>
    </form>
  );
}
