'use client';

import { useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { approvedVersionOf } from '@/lib/job/approvedVersionOf';
import type { Artwork } from '@/shared/schemas/artwork';
import styles from './ApprovalNote.module.css';

/** Whether the customer has said yes to the version that is there: noted with one press, and taken away with one. */
export function ApprovalNote({ artwork, id }: Readonly<{ artwork: Artwork; id: string }>) {
  const { input, workspace } = useJob();
  const { name, version } = artwork;
  const approved = approvedVersionOf(input, id);
  const told = useRef<HTMLParagraphElement>(null);
  const say = (label: string, said: number | null) => {
    // The button that was pressed goes; what it comes to is said here.
    told.current?.focus();
    workspace.note(label, [{ kind: 'approval', body: { artworkId: id, version: said } }]);
  };
  return (
    <div className={styles.note}>
      <p ref={told} role="status" tabIndex={-1}>
        {approved === null
          ? 'The customer has not approved it yet.'
          : approved === version
            ? `The customer has approved version ${version}.`
            : `The customer approved version ${approved}, not version ${version}.`}
      </p>
      <div className={styles.buttons}>
        {approved !== version && (
          <Button onPress={() => say(`Approval of ${name}, version ${version}`, version)}>
            Version {version} is approved
          </Button>
        )}
        {approved !== null && (
          <Button kind="quiet" onPress={() => say(`No approval of ${name}`, null)}>
            Take the approval away
          </Button>
        )}
      </div>
    </div>
  );
}
