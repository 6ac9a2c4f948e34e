'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { lostFileWords } from '@/app/_words/attachments/attachmentWords';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Attachment } from '@/shared/schemas/keptFile';
import { saveAttachment } from './handOut';

type KeptFileButtonProps = Readonly<{
  attachment: Attachment;
  readFile: (id: string) => Promise<StoredFile | null>;
}>;

/** A file that an entry names: saved, or told that it is lost. */
export function KeptFileButton({ attachment, readFile }: KeptFileButtonProps) {
  const [isLost, setLost] = useState(false);
  const save = async () => {
    const file = await readFile(attachment.fileId);
    setLost(file === null);
    if (file !== null) saveAttachment(file, attachment);
  };
  return (
    <>
      <Button kind="quiet" spoken={`Save ${attachment.fileName}`} onPress={() => void save()}>
        Save {attachment.purpose === 'receipt' ? 'the receipt' : 'the file'}
      </Button>
      {isLost && <p role="alert">{lostFileWords(attachment.fileName)}</p>}
    </>
  );
}
