'use client';

import { useEffect, useState } from 'react';
import { loadBitmap } from '@/app/_artwork/loadBitmap';
import { useJob } from '@/app/_docket/common/useJob';
import type { Picture } from '@/shared/schemas/picture';

/** The kept file of a picture, small and unpacked; `isGone` where it is not on this device. */
export function usePictureBitmap(picture: Picture) {
  const { readFile } = useJob().workspace;
  const [found, setFound] = useState<{ readonly of: string; readonly bitmap: ImageBitmap | null } | null>(
    null,
  );
  useEffect(() => {
    let isLeft = false;
    const load = async () => {
      const file = await readFile(picture.fileId);
      const bitmap = file === null ? null : await loadBitmap(file, picture);
      if (isLeft) bitmap?.close();
      else setFound({ of: picture.fileId, bitmap });
    };
    void load();
    return () => {
      isLeft = true;
    };
  }, [readFile, picture]);
  const own = found?.of === picture.fileId ? found : null;
  return { bitmap: own?.bitmap ?? null, isGone: own !== null && own.bitmap === null };
}
