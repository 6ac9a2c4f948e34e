'use client';

import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { storagePromiseWords, storageRoomWords } from '@/app/_words/store/storagePromiseWords';
import styles from './StorageTold.module.css';
import { useStoragePromise } from './useStoragePromise';

/** What the browser answered when it was asked to keep everything, and the room there is. */
export function StorageTold() {
  const { promise, room } = useStoragePromise();
  const formatter = formatterFor(useTextContext());
  if (promise === null) return null;
  return (
    <p className={styles.told}>
      {storagePromiseWords[promise]} {room !== undefined && storageRoomWords(room, formatter)}
    </p>
  );
}
