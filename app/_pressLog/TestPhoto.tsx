'use client';

import { useEffect, useState } from 'react';
import { canBeShown, showFile } from '@/app/_attachments/handOut';
import { KeptFileButton } from '@/app/_attachments/KeptFileButton';
import { lostFileWords } from '@/app/_words/attachments/attachmentWords';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Attachment } from '@/shared/schemas/keptFile';
import styles from './Log.module.css';

type TestPhotoProps = Readonly<{
  photo: Attachment;
  /** What it shows, for who does not see it. */
  says: string;
  readFile: (id: string) => Promise<StoredFile | null>;
}>;

/** The photo of a test, small; a tap shows it whole. What is no picture can be saved. */
export const TestPhoto = (props: TestPhotoProps) =>
  canBeShown(props.photo) ? (
    <SmallPhoto {...props} />
  ) : (
    <KeptFileButton attachment={props.photo} readFile={props.readFile} />
  );

// Helpers

function SmallPhoto({ photo, says, readFile }: TestPhotoProps) {
  const { fileId, fileName, mediaType } = photo;
  const [shown, setShown] = useState<{ readonly file: StoredFile; readonly address: string } | null>(null);
  const [isLost, setLost] = useState(false);
  useEffect(() => {
    let isLeft = false;
    let made: string | null = null;
    void readFile(fileId).then((file) => {
      if (isLeft) return;
      setLost(file === null);
      if (file === null) return;
      made = URL.createObjectURL(new Blob([file.content], { type: mediaType }));
      setShown({ file, address: made });
    });
    return () => {
      isLeft = true;
      if (made !== null) URL.revokeObjectURL(made);
    };
  }, [readFile, fileId, mediaType]);
  if (isLost) return <p role="alert">{lostFileWords(fileName)}</p>;
  if (shown === null) return null;
  return (
    <button type="button" className={styles.photo} onClick={() => showFile(shown.file, photo)}>
      {/* biome-ignore lint/performance/noImgElement: a file of this device has no address that a server could shrink */}
      <img src={shown.address} alt={says} />
    </button>
  );
}
