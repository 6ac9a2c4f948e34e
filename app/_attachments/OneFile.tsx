'use client';

import type { StoredFile } from '@/lib/stored/storedFile';
import type { Attachment } from '@/shared/schemas/keptFile';
import { Attachments } from './Attachments';
import styles from './Attachments.module.css';

/** A file that is kept once what it proves is noted. */
export interface FileDraft {
  readonly attachment: Attachment;
  readonly file: StoredFile;
}

type OneFileProps = Readonly<{
  /** What it shows. */
  label: string;
  purpose: Attachment['purpose'];
  value: FileDraft | null;
  onChange: (value: FileDraft | null) => void;
}>;

/** One file that goes with what is noted; a second is told and not taken. */
export function OneFile({ label, purpose, value, onChange }: OneFileProps) {
  return (
    <fieldset className={styles.one}>
      <legend className={styles.legend}>{label}</legend>
      <Attachments
        attachments={value === null ? [] : [value.attachment]}
        purposes={[purpose]}
        readFile={async () => value?.file ?? null}
        onAdd={(attachment, file) => {
          if (value !== null) return { state: 'unchanged' };
          onChange({ attachment, file });
          return { state: 'shown' };
        }}
        onRemove={() => onChange(null)}
      />
    </fieldset>
  );
}
