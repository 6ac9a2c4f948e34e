'use client';

import { useEffect, useState } from 'react';
import { appPreviews } from '@/app/_artwork/previews';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { type ShownPart, shownPart } from '@/lib/artwork/shownPicture';
import type { JobInput } from '@/shared/schemas/request';

/** Addresses of small pictures, by artwork id. */
type ArtworkPreviews = ReadonlyMap<string, string>;

const none: ArtworkPreviews = new Map();

/** @returns the pictures of artworks whose file is kept, as the part of them that prints. */
export function useArtworkPreviews(
  { artworks }: Pick<JobInput, 'artworks'>,
  { readFile }: Pick<Workspace, 'readFile'>,
): ArtworkPreviews {
  const [previews, setPreviews] = useState(none);
  // Artworks are read anew with every edit of the job; the files they name rarely change.
  const files = JSON.stringify(
    Object.entries(artworks).flatMap(([id, { picture }]) =>
      picture === null ? [] : [[id, picture.fileId, picture.trimmed]],
    ),
  );

  // biome-ignore lint/correctness/useExhaustiveDependencies: `files` says all of the artworks that counts here
  useEffect(() => {
    let isLeft = false;
    const made = new Map<string, string>();
    const load = async () => {
      for (const [id, { picture }] of Object.entries(artworks)) {
        if (picture === null) continue;
        const bitmap = await appPreviews().of(picture, readFile);
        const address = bitmap === null ? null : await addressOf(bitmap, shownPart(picture));
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

function forget(previews: ArtworkPreviews): void {
  for (const address of previews.values()) URL.revokeObjectURL(address);
}

/** The sheets and the job on paper show the same part of the same picture: it is drawn and packed once for both. */
const packed = new WeakMap<ImageBitmap, { readonly part: string; readonly blob: Promise<Blob | null> }>();

async function addressOf(bitmap: ImageBitmap, shown: ShownPart | null): Promise<string | null> {
  const part = JSON.stringify(shown);
  const known = packed.get(bitmap);
  const blob = known?.part === part ? known.blob : packedPart(bitmap, shown);
  packed.set(bitmap, { part, blob });
  const made = await blob;
  return made === null ? null : URL.createObjectURL(made);
}

/** @returns null where the browser draws nothing: the sheet then shows the name alone. */
async function packedPart(bitmap: ImageBitmap, shown: ShownPart | null): Promise<Blob | null> {
  // In a turn of its own, apart from the drawing of the docket that asks for it.
  await new Promise((resolve) => setTimeout(resolve));
  try {
    const { x, y, width, height } = shown ?? { x: 0, y: 0, width: 1, height: 1 };
    const canvas = new OffscreenCanvas(
      Math.max(1, Math.round(bitmap.width * width)),
      Math.max(1, Math.round(bitmap.height * height)),
    );
    canvas.getContext('2d')?.drawImage(bitmap, -x * bitmap.width, -y * bitmap.height);
    return await canvas.convertToBlob({ type: 'image/png' });
  } catch {
    return null;
  }
}
