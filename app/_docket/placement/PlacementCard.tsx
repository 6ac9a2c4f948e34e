'use client';

import { ArtworkPick } from '@/app/_docket/artwork/ArtworkPick';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { clothRgb } from '@/lib/artwork/clothRgb';
import { printOfSize } from '@/lib/job/printOfSize';
import type { Line } from '@/shared/schemas/job';
import { inkColour } from './inkColour';
import styles from './PlacementCard.module.css';
import { pieceDrawing } from './pieceDrawing';

type PlacementCardProps = Readonly<{ line: Line; lineIndex: number; index: number }>;

/** A print where it sits on the piece, drawn to scale, with its name, size and picture. */
export function PlacementCard({ line, lineIndex, index }: PlacementCardProps) {
  const { input } = useJob();
  const formatter = formatterFor(useTextContext());
  const placement = line.placements[index];
  const blank = input.blanks[line.blankId];
  // The size most are made in stands for all.
  const size = line.quantities.toSorted((one, other) => other.quantity - one.quantity)[0]?.size;
  const print =
    placement?.prints[printOfSize(placement, size ?? blank?.sizes[0]?.name ?? '') ?? 0] ??
    placement?.prints[0];
  if (placement === undefined || print === undefined) return null;
  const artwork = input.artworks[placement.artworkId];
  const drawn = pieceDrawing({
    blank: blank ?? { kind: 'garment', substrate: 'polyesterShirt' },
    size: blank?.sizes.find(({ name }) => name === size) ?? blank?.sizes[0],
    position: placement.position,
    print,
    dropFromCollarMm: placement.dropFromCollarMm,
  });
  const cloth = clothRgb(blank?.colour ?? { L: 100, a: 0, b: 0 }).map(Math.round);
  const ink = artwork === undefined ? null : inkColour(artwork);
  const { x, y, width, height } = drawn.print;
  return (
    <li className={styles.card}>
      <svg className={styles.drawing} viewBox={drawn.box.join(' ')} aria-hidden="true" focusable="false">
        {drawn.outlines.map((outline, at) => (
          <path
            key={outline}
            className={styles.outline}
            d={outline}
            // What lies behind, as a handle, is no ground to print on.
            fill={at === drawn.outlines.length - 1 ? `rgb(${cloth.join(' ')})` : 'none'}
          />
        ))}
        <rect
          className={ink === null ? styles.unseen : styles.print}
          {...{ x, y, width, height }}
          {...(ink === null ? {} : { fill: ink })}
        />
        <path className={styles.picture} d={hills(drawn.print)} />
      </svg>
      <p className={styles.name}>{placement.name}</p>
      <p className={styles.size}>{formatter.size(print.widthMm, print.heightMm)}</p>
      <ArtworkPick placement={placement} path={['lines', lineIndex, 'placements', index]} />
    </li>
  );
}

// Helpers

interface PrintBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Two hills at the foot of the box: the sign of a picture. */
function hills({ x, y, width, height }: PrintBox): string {
  const points = [
    [0, 1],
    [0, 0.78],
    [0.3, 0.45],
    [0.5, 0.68],
    [0.72, 0.38],
    [1, 0.72],
    [1, 1],
  ].map(([right = 0, down = 0]) => `${x + right * width} ${y + down * height}`);
  return `M${points.join('L')}Z`;
}
