'use client';

import { useState, useSyncExternalStore } from 'react';
import { deviceName, LONGEST_DEVICE_NAME } from '@/app/_copies/deviceName';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { ClockBehind } from '@/app/_keeping/ClockBehind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { letterWords } from '@/app/_words/store/deviceWords';
import styles from './WorkshopParts.module.css';

type ThisDeviceProps = Pick<ReadyWorkspace, 'clockBehind'> &
  Readonly<{
    /** Null before anything was numbered here. */
    letter: string | null;
  }>;

/** What tells this device from the maker's others: its name, its letter, its clock. */
export function ThisDevice({ letter, clockBehind }: ThisDeviceProps) {
  const name = useSyncExternalStore(deviceName.subscribe, deviceName.recall, noName);
  const [isRefused, setRefused] = useState(false);
  return (
    <>
      <ClockBehind clockBehind={clockBehind} />
      <FieldGroup>
        <TextField
          label="Name of this device"
          value={name}
          longest={LONGEST_DEVICE_NAME}
          hint="Such as “phone” or “laptop in the shed”. Kept on this device only; copies say that they were made on it."
          caution={isRefused ? 'This browser keeps no name: copies say the letter instead.' : undefined}
          onCommit={(to) => setRefused(!deviceName.remember(to))}
        />
      </FieldGroup>
      <h3 className={styles.sub}>Letter of its papers</h3>
      <p className={styles.words}>{letterWords(letter)}</p>
      <p className={styles.words}>
        Should two of your devices show the same letter, bring a copy or a carried file of the one in on the
        other: the other takes a free letter for its next numbers and says so. What was numbered before keeps
        its number.
      </p>
    </>
  );
}

// Helpers

const noName = () => '';
