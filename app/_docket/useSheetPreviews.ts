'use client';

import { useContext, useEffect, useState } from 'react';
import type { JobInput } from '@/shared/schemas/request';
import { loadBitmap } from '../_artwork/loadBitmap';
import { JobDeskContext } from './jobDesk';

type Previews = ReadonlyMap<string, string>;

const none: Previews = new Map();

/** @returns addresses of small pictures, by artwork id; only of artworks whose file is kept. */
export function useSheetPreviews({ artworks }: JobInput): Previews {
  const readFile = useContext(JobDeskContext)?.maker.readFile;
  const [previews, setPreviews] = useState(none);
  // Artworks are read anew with every edit of the job; the files they name rarely change.
  const files = JSON.stringify(
    Object.entries(artworks).flatMap(([id, { picture }]) => (picture === null ? [] : [[id, picture.fileId]])),
  );

  // biome-ignore lint/correctness/useExhaustiveDependencies: `files` says all of the artworks that counts here
  useEffect(() => {
    if (readFile === undefined) return;
    let isLeft = false;
    const made = new Map<string, string>();
    const load = async () => {
      for (const [id, { picture }] of Object.entries(artworks)) {
        if (picture === null) continue;
        const file = await readFile(picture.fileId);
        const bitmap = file === null ? null : await loadBitmap(file, picture);
        const address = bitmap === null ? null : await addressOf(bitmap);
        if (address !== null) made.set(id, address);
      }
      if (isLeft) forget(made);
      else setPreviews(new Map(made));
    };
    void load();
    return () => {
      isLeft = true;
      forget(made);
    };
  }, [readFile, files]);

  return previews;
}

function forget(previews: Previews): void {
  for (const address of previews.values()) URL.revokeObjectURL(address);
}

/** @returns null where the browser draws nothing: the sheet then shows the name alone. */
async function addressOf(bitmap: ImageBitmap): Promise<string | null> {
  try {
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    canvas.getContext('2d')?.drawImage(bitmap, 0, 0);
    return URL.createObjectURL(await canvas.convertToBlob({ type: 'image/png' }));
  } catch {
    return null;
  } finally {
    bitmap.close();
  }
}
