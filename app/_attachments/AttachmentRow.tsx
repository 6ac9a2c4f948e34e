'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { ListRow } from '@/app/_controls/RowList';
import { attachmentWords, lostFileWords, type PurposeWords } from '@/app/_words/attachments/attachmentWords';
import type { Formatter } from '@/app/_words/formatter';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Attachment } from '@/shared/schemas/keptFile';
import styles from './Attachments.module.css';
import { canBeShown, saveAttachment, showFile } from './handOut';

type AttachmentRowProps = Readonly<{
  attachment: Attachment;
  formatter: Formatter;
  words: PurposeWords;
  readFile: (id: string) => Promise<StoredFile | null>;
  onRemove: () => void;
}>;

/** One kept file: what it is, and what can be done with it. */
export function AttachmentRow({ attachment, formatter, words, readFile, onRemove }: AttachmentRowProps) {
  const [isLost, setLost] = useState(false);
  const { fileName } = attachment;
  const handOut = async (how: typeof showFile) => {
    const file = await readFile(attachment.fileId);
    setLost(file === null);
    if (file !== null) how(file, attachment);
  };
  return (
    <ListRow
      acts={
        <>
          {canBeShown(attachment) && (
            <Button kind="quiet" spoken={`Open ${fileName}`} onPress={() => void handOut(showFile)}>
              Open
            </Button>
          )}
          <Button kind="quiet" spoken={`Save ${fileName}`} onPress={() => void handOut(saveAttachment)}>
            Save
          </Button>
          <Button kind="quiet" spoken={`Remove ${fileName}`} onPress={onRemove}>
            Remove
          </Button>
        </>
      }
    >
      <bdi className={styles.name}>{fileName}</bdi>
      <span className={styles.more}>{attachmentWords(attachment, formatter, words)}</span>
      {isLost && (
        <p className={styles.wrong} role="alert">
          {lostFileWords(fileName)}
        </p>
      )}
    </ListRow>
  );
}
