'use client';

import { useEffect, useRef, useState } from 'react';
import { drawOnCloth } from '@/app/_artwork/drawOnCloth';
import { clothRgb } from '@/lib/artwork/clothRgb';
import type { PictureInPrint } from '@/lib/artwork/placementOfPicture';
import type { Blank } from '@/shared/schemas/blank';
import type { Picture } from '@/shared/schemas/picture';
import styles from './ArtworkPreview.module.css';
import { usePictureBitmap } from './usePictureBitmap';

type ArtworkPreviewProps = Readonly<{
  picture: Picture;
  placed: PictureInPrint;
  /** Width ÷ height of the print. */
  shape: number;
  colour: Blank['colour'];
  /** What is seen, for whoever does not see it. */
  says: string;
}>;

/** Longest side, drawn twice as fine for dense screens. */
const LONGEST_PX = 220;
const FINE = 2;

/** A picture on the colour of the cloth, in the shape of its print. */
export function ArtworkPreview({ picture, placed, shape, colour, says }: ArtworkPreviewProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const { bitmap, isGone } = usePictureBitmap(picture);
  const [width, height] = shape > 1 ? [LONGEST_PX, LONGEST_PX / shape] : [LONGEST_PX * shape, LONGEST_PX];
  const [drawn, setDrawn] = useState(false);
  const { L, a, b } = colour;

  useEffect(() => {
    if (bitmap === null) return;
    // Each print in a turn of its own: some milliseconds each, they would add up with what else the picture changes.
    const turn = setTimeout(() => {
      if (canvas.current === null) return;
      drawOnCloth(canvas.current, bitmap, picture, placed, clothRgb({ L, a, b }));
      setDrawn(true);
    });
    return () => clearTimeout(turn);
  }, [bitmap, picture, placed, L, a, b]);

  if (isGone) {
    return (
      <p className={styles.gone}>
        The file is no longer on this device; its figures are. Choose it again to see it here.
      </p>
    );
  }
  return (
    <canvas
      ref={canvas}
      className={styles.canvas}
      width={Math.max(1, Math.round(width * FINE))}
      height={Math.max(1, Math.round(height * FINE))}
      role="img"
      aria-label={says}
      data-drawn={drawn}
      style={{ inlineSize: Math.max(1, width) }}
    />
  );
}
