'use client';

import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useJobFields } from '@/app/_docket/common/jobFields';
import { TextField } from '@/app/_fields/TextField';
import type { Finding } from '@/shared/finding';
import styles from './WaiveForm.module.css';

/** What the schema asks of a reason. */
const SHORTEST_REASON = 3;
const LONGEST_REASON = 500;

/** Lets a stop pass for a reason, which is asked for and will be printed. */
export function WaiveForm({ finding }: Readonly<{ finding: Finding }>) {
  const { jobId, workspace } = useJobFields();
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
  const isLongEnough = reason.trim().length >= SHORTEST_REASON;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!isLongEnough) return;
    const { id, where } = finding;
    workspace.changeJob(jobId, 'Go on in spite of a stop', (job) => ({
      ...job,
      waivers: [
        ...job.waivers,
        {
          finding: id,
          placementId: where.placementId ?? null,
          lineId: where.lineId ?? null,
          reason: reason.trim(),
        },
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
        longest={LONGEST_REASON}
        hint="Your reason is printed on the run sheet."
        onCommit={setReason}
      />
      <div className={styles.acts}>
        <Button
          type="submit"
          kind="strong"
          blockedBy={isLongEnough ? undefined : `A reason has ${SHORTEST_REASON} letters at least.`}
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
