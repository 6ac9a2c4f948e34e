'use client';

import { type DragEvent, useEffect, useId, useRef, useState } from 'react';
import { type Brought, fileOfTransfer } from '@/app/_artwork/fileOfTransfer';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { PartGone } from '@/app/_network/PartGone';
import { TryAgain } from '@/app/_network/TryAgain';
import { wording } from '@/app/_words/findings/wording';
import { PART_GONE } from '@/app/_words/missingAnswerWords';
import styles from './ArtworkIntake.module.css';
import type { usePictureIntake } from './usePictureIntake';

type ArtworkIntakeProps = Readonly<{
  reader: ReturnType<typeof usePictureIntake>;
  artworkName: string;
  hasPicture: boolean;
}>;

const stageWords = {
  reading: 'Reading',
  decoding: 'Unpacking',
  measuring: 'Measuring the ink of',
} as const;

/** Where a picture is chosen, dropped or pasted, and told of until it is read. */
export function ArtworkIntake({ reader, artworkName, hasPicture }: ArtworkIntakeProps) {
  const { intake, take, tell, cancel } = reader;
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [isOver, setIsOver] = useState(false);
  useEffect(keepPageOnMissedDrop, []);
  const bring = (brought: Brought) => {
    if (brought.kind === 'file') return take(brought.file);
    return brought.kind === 'several'
      ? tell(
          wording(
            `Those were ${brought.count} files.`,
            'Bring them in one at a time, each to its own artwork.',
          ),
        )
      : tell(wording('There was no picture file in it.', 'Save the picture as a file and choose that.'));
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setIsOver(false);
    bring(fileOfTransfer(event.dataTransfer.files));
  };
  const isReading = intake.state === 'reading';
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping and pasting are further ways beside the button
    <div
      className={classes(styles.zone, isOver && styles.over)}
      onDragOver={(event) => {
        event.preventDefault();
        setIsOver(true);
      }}
      onDragLeave={() => setIsOver(false)}
      onDrop={drop}
      onPaste={(event) => bring(fileOfTransfer(event.clipboardData.files))}
    >
      <div className={styles.ways}>
        <Button onPress={() => input.current?.click()}>
          {hasPicture ? 'Choose another picture' : 'Choose the picture'}
        </Button>
        <span className={styles.hint}>
          or drop it here, or paste it. PNG, JPEG, WebP, GIF or SVG; it stays on this device.
        </span>
        <input
          ref={input}
          className="visuallyHidden"
          id={id}
          type="file"
          accept="image/png,image/jpeg,image/webp,image/gif,image/svg+xml,.png,.jpg,.jpeg,.webp,.gif,.svg"
          tabIndex={-1}
          aria-label={`Picture file of ${artworkName}`}
          onChange={(event) => {
            const brought = fileOfTransfer(event.target.files);
            // The same file may be chosen again once it is mended.
            event.target.value = '';
            if (brought.kind === 'file') take(brought.file);
          }}
        />
      </div>
      {isReading && (
        <div className={styles.progress}>
          <progress max={1} value={intake.share} aria-label={`Reading ${intake.name}`} />
          <Button kind="quiet" onPress={cancel}>
            Stop
          </Button>
        </div>
      )}
      {intake.state === 'waiting' && (
        <div className={styles.progress}>
          {intake.isGone ? (
            <PartGone>
              “{intake.name}” was not read: {PART_GONE}. Choose the picture again afterwards.
            </PartGone>
          ) : (
            <TryAgain failure={intake} onAgain={intake.again}>
              “{intake.name}” waits: the part of the app that reads pictures could not be fetched. It is read
              by itself once there is a network.
            </TryAgain>
          )}
          <Button kind="quiet" onPress={cancel}>
            Stop
          </Button>
        </div>
      )}
      <div role="status" className={styles.told}>
        {isReading && (
          <p className={styles.hint}>
            {stageWords[intake.stage]} {intake.name}
          </p>
        )}
        {intake.state === 'told' && (
          <p className={classes(intake.isRefusal && styles.refusal)}>
            <strong>{intake.wording.sentence}</strong> {intake.wording.detail}
          </p>
        )}
      </div>
    </div>
  );
}

// Helpers

/** A file dropped beside its place would open in place of the app. */
function keepPageOnMissedDrop(): () => void {
  const stay = (event: Event) => event.preventDefault();
  window.addEventListener('dragover', stay);
  window.addEventListener('drop', stay);
  return () => {
    window.removeEventListener('dragover', stay);
    window.removeEventListener('drop', stay);
  };
}
