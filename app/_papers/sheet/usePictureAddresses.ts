'use client';

import { useEffect, useState } from 'react';
import type { StoredFile } from '@/lib/stored/storedFile';

/** Addresses of pictures by the SHA-256 of their file. */
export type PictureAddresses = ReadonlyMap<string, string>;

const none: PictureAddresses = new Map();

/**
 * @param ids of kept files
 * @returns addresses under which the page shows them, for as long as it does; one that is not here has none
 */
export function usePictureAddresses(
  ids: readonly string[],
  readFile: (id: string) => Promise<StoredFile | null>,
): PictureAddresses {
  const [addresses, setAddresses] = useState(none);
  const wanted = ids.join(' ');
  useEffect(() => {
    if (wanted === '') return setAddresses(none);
    let isLeft = false;
    const made: string[] = [];
    const show = async () => {
      const found = await Promise.all(wanted.split(' ').map(async (id) => [id, await readFile(id)] as const));
      if (isLeft) return;
      const shown = new Map<string, string>();
      for (const [id, file] of found) {
        if (file === null) continue;
        const address = URL.createObjectURL(file.content);
        made.push(address);
        shown.set(id, address);
      }
      setAddresses(shown);
    };
    // A picture that cannot be read leaves its place, which says so.
    show().catch(() => setAddresses(none));
    return () => {
      isLeft = true;
      for (const address of made) URL.revokeObjectURL(address);
    };
  }, [wanted, readFile]);
  return addresses;
}
