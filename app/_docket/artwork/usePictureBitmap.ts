'use client';

import { useEffect, useState } from 'react';
import { appPreviews } from '@/app/_artwork/previews';
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
      const bitmap = await appPreviews().of(picture, readFile);
      if (!isLeft) setFound({ of: picture.fileId, bitmap });
    };
    void load();
    return () => {
      isLeft = true;
    };
  }, [readFile, picture]);
  const own = found?.of === picture.fileId ? found : null;
  return { bitmap: own?.bitmap ?? null, isGone: own !== null && own.bitmap === null };
}
