'use client';

import { useState } from 'react';
import { fieldId } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { NumberField } from '@/app/_fields/NumberField';
import { numberLimits } from '@/shared/limits';
import { type Artwork, artworkSchema } from '@/shared/schemas/artwork';
import type { FieldPath } from '@/shared/setIn';

type PixelFieldsProps = Readonly<{ artwork: Artwork; id: string; place: FieldPath }>;

interface Half {
  readonly width: number | null;
  readonly height: number | null;
}

const nothing: Half = { width: null, height: null };

/** Width and height in pixels. The artwork takes the pair; one alone waits here for the other. */
export function PixelFields({ artwork, id, place }: PixelFieldsProps) {
  const { artworkField } = useJob();
  const { pixels } = artwork;
  const { onCommit } = artworkField(`Pixels of ${artwork.name}`, id, place, ['pixels']);
  const [half, setHalf] = useState<Half>(pixels ?? nothing);
  const shown = pixels ?? half;
  const set = (next: Half) => {
    setHalf(next);
    if (next.width !== null && next.height !== null) onCommit(next);
    else if (pixels !== null) onCommit(null);
  };
  const isHalf = (shown.width === null) !== (shown.height === null);
  const field = { unit: 'px', width: 'narrow' } as const;
  return (
    <>
      <NumberField
        {...field}
        id={fieldId([...place, 'artwork', 'pixels', 'width'])}
        {...numberLimits(artworkSchema, ['pixels', 'width'])}
        label="Width of the picture"
        value={shown.width}
        hint={isHalf ? 'Both are needed.' : pixels === null ? 'Empty for line art.' : undefined}
        onCommit={(width) => set({ ...shown, width })}
      />
      <NumberField
        {...field}
        id={fieldId([...place, 'artwork', 'pixels', 'height'])}
        {...numberLimits(artworkSchema, ['pixels', 'height'])}
        label="Height of the picture"
        value={shown.height}
        onCommit={(height) => set({ ...shown, height })}
      />
    </>
  );
}
