'use client';

import { useEffect, useState, useSyncExternalStore } from 'react';
import type { StoragePromise, StorageRoom } from '@/app/_words/store/storagePromiseWords';
import { storagePromise, storageRoom } from './storagePromise';

interface Standing {
  /** Null until it is known. */
  readonly promise: StoragePromise | null;
  /** `undefined` until it is known, null where the browser does not say. */
  readonly room: StorageRoom | null | undefined;
}

/** @returns what the browser says of keeping, and of the room there is. */
export function useStoragePromise(): Standing {
  const promise = useSyncExternalStore(storagePromise.subscribe, storagePromise.here, notKnown);
  const [room, setRoom] = useState<StorageRoom | null | undefined>(undefined);
  useEffect(() => {
    let isHere = true;
    void storagePromise.look();
    void storageRoom().then((known) => isHere && setRoom(known));
    return () => {
      isHere = false;
    };
  }, []);
  return { promise, room };
}

/** Asks the browser to keep everything as soon as something of the maker's own is kept. */
export function useAskToKeep(hasOwnKept: boolean): void {
  useEffect(() => {
    if (hasOwnKept) void storagePromise.ask();
  }, [hasOwnKept]);
}

// Helpers

const notKnown = () => null;
