'use client';

import { useEffect, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { useTextContext } from '@/app/_fields/useTextContext';
import { FileChooser } from '@/app/_files/FileChooser';
import { lostFileWords } from '@/app/_words/attachments/attachmentWords';
import { formatterFor } from '@/app/_words/formatter';
import { logoRefusalWords } from '@/app/_words/workshop/logoWords';
import styles from '@/app/_workshop/WorkshopParts.module.css';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { KeptFile } from '@/shared/schemas/keptFile';
import { takeLogo } from './takeLogo';

type LogoFieldProps = Readonly<{ fields: WorkshopFields; logo: KeptFile | null }>;

type Told =
  | { readonly state: 'nothing' }
  | { readonly state: 'reading'; readonly name: string }
  | { readonly state: 'refused'; readonly sentence: string };

/** The picture at the head of papers, shown as it is kept. */
export function LogoField({ fields: { workspace }, logo }: LogoFieldProps) {
  const context = useTextContext();
  const [told, setTold] = useState<Told>({ state: 'nothing' });
  const put = (label: string, to: KeptFile | null, files: readonly StoredFile[]) =>
    workspace.editWithFiles(
      label,
      [
        {
          do: 'change',
          kind: 'workshop',
          id: WORKSHOP_ID,
          to: (workshop) => ({ ...workshop, seller: { ...workshop.seller, logo: to } }),
        },
      ],
      files,
    );
  const take = async ([file]: readonly File[]) => {
    if (file === undefined) return;
    setTold({ state: 'reading', name: file.name });
    const taken = await takeLogo(file);
    if (taken.state === 'taken') {
      put('Picture on papers', taken.logo, [taken.file]);
      setTold({ state: 'nothing' });
    } else {
      const { sentence, detail } = logoRefusalWords(
        file.name,
        taken.refusal,
        formatterFor(context),
        context.locale,
      );
      setTold({ state: 'refused', sentence: `${sentence} ${detail}` });
    }
  };
  return (
    <div id={workshopFieldId(['seller', 'logo'])} tabIndex={-1}>
      <h3 className={styles.sub}>Your mark</h3>
      {logo !== null && <LogoPreview key={logo.fileId} logo={logo} readFile={workspace.readFile} />}
      <div className={styles.logoWays}>
        <FileChooser
          button={logo === null ? 'Choose a picture' : 'Choose another'}
          label="Picture at the head of papers"
          accept="image/png,image/jpeg,image/webp,image/gif"
          onFiles={(files) => void take(files)}
        >
          PNG or JPEG, up to 5 MB. Each paper carries it whole, so a small one keeps papers easy to send.
        </FileChooser>
        {logo !== null && (
          <Button
            kind="quiet"
            spoken="Remove the picture"
            onPress={() => put('Remove the picture on papers', null, [])}
          >
            Remove
          </Button>
        )}
      </div>
      <div aria-live="polite">
        {told.state === 'reading' && (
          <p>
            Reading <bdi>{told.name}</bdi>…
          </p>
        )}
        {told.state === 'refused' && <p className={styles.wrong}>{told.sentence}</p>}
      </div>
    </div>
  );
}

// Helpers

type LogoPreviewProps = Readonly<{
  logo: KeptFile;
  readFile: (id: string) => Promise<StoredFile | null>;
}>;

function LogoPreview({ logo: { fileId, fileName, mediaType }, readFile }: LogoPreviewProps) {
  const [address, setAddress] = useState<string | null>(null);
  const [isLost, setLost] = useState(false);
  useEffect(() => {
    let isLeft = false;
    let made: string | null = null;
    void readFile(fileId).then((file) => {
      if (isLeft) return;
      setLost(file === null);
      if (file === null) return;
      made = URL.createObjectURL(new Blob([file.content], { type: mediaType }));
      setAddress(made);
    });
    return () => {
      isLeft = true;
      if (made !== null) URL.revokeObjectURL(made);
    };
  }, [readFile, fileId, mediaType]);
  if (isLost)
    return (
      <p className={styles.wrong} role="alert">
        {lostFileWords(fileName)}
      </p>
    );
  return (
    <figure className={styles.logo}>
      {address !== null && (
        // biome-ignore lint/performance/noImgElement: a file of this device has no address that a server could shrink
        <img src={address} alt="Your mark, as papers show it" />
      )}
      <figcaption>{fileName}</figcaption>
    </figure>
  );
}
