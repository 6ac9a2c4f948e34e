'use client';

import { useId } from 'react';
import type { PlacedPiece } from '@/lib/packing/placedPiece';
import type { Sheet } from '@/shared/schemas/workshop';
import { sheetSizes } from '@/shared/tables/sheetSizes';
import styles from './SheetDrawing.module.css';

/** A piece as it is drawn. */
interface DrawnPiece extends PlacedPiece {
  readonly name: string;
  /** Whether the picture lies mirrored on the paper. */
  readonly reversed: boolean;
  readonly fit: 'inside' | 'fill' | 'stretch';
  /** Address of a small picture of it. */
  readonly preview?: string | undefined;
}

type SheetDrawingProps = Readonly<{
  pieces: readonly DrawnPiece[];
  /** Size of the paper; of a roll, of what is cut off. */
  paper: Pick<Sheet, 'widthMm' | 'heightMm'>;
  marginMm: number;
  /** Where it is cut across, mm from its start. */
  cutsMm?: readonly number[];
  /** The drawing in words. */
  says: string;
}>;

/** Room that a drawing has at most, and the size its names are written in: 13 px where a letter of the page has 16. */
const HIGH_REM = 7.25;
const WIDE_REM = 18;
const NAME_REM = 0.8125;
const { widthMm: LETTER_WIDTH_MM } = sheetSizes.letter;

/** One sheet to scale: the edge the printer cannot reach, the pieces as they lie, and hatching where nothing lies. */
export function SheetDrawing({ pieces, paper, marginMm, cutsMm = [], says }: SheetDrawingProps) {
  const id = useId();
  const { widthMm, heightMm } = paper;
  // Wide paper is drawn as narrow as any: its hatching and letters keep their size on the screen.
  const grain = Math.max(1, widthMm / LETTER_WIDTH_MM);
  const nameMm = NAME_REM * Math.max((heightMm + 4) / HIGH_REM, (widthMm + 4) / WIDE_REM);
  return (
    <svg
      className={styles.drawing}
      viewBox={`-2 -2 ${widthMm + 4} ${heightMm + 4}`}
      role="img"
      aria-label={says}
    >
      <defs>
        <pattern
          id={`${id}-hatch`}
          width="9"
          height="9"
          patternUnits="userSpaceOnUse"
          patternTransform={`scale(${grain})`}
        >
          <path className={styles.hatch} d="M-1 10L10 -1M-2 2L2 -2M7 11L11 7" />
        </pattern>
        <linearGradient id={`${id}-print`} x1="0" y1="0" x2="1" y2="1">
          <stop className={styles.cold} offset="0" />
          <stop className={styles.dull} offset="1" />
        </linearGradient>
      </defs>
      <rect className={styles.paper} width={widthMm} height={heightMm} />
      <rect fill={`url(#${id}-hatch)`} width={widthMm} height={heightMm} />
      {marginMm > 0 && (
        <rect
          className={styles.reach}
          x={marginMm}
          y={marginMm}
          width={widthMm - 2 * marginMm}
          height={heightMm - 2 * marginMm}
        />
      )}
      {pieces.map((piece) => (
        <g key={`${piece.xMm} ${piece.yMm}`}>
          <rect
            className={styles.piece}
            // Colour behind a picture would look like a box of its own.
            fill={piece.preview === undefined ? `url(#${id}-print)` : 'none'}
            x={piece.xMm}
            y={piece.yMm}
            width={piece.widthMm}
            height={piece.heightMm}
          />
          {piece.preview !== undefined && <Preview piece={piece} address={piece.preview} />}
          {piece.preview === undefined && (
            <text className={styles.name} fontSize={nameMm} transform={lying(piece)}>
              {nameLines(piece, nameMm).map((line, at, { length }) => (
                <tspan key={line} x={0} y={(at - (length - 1) / 2) * LINE * nameMm}>
                  {line}
                </tspan>
              ))}
            </text>
          )}
        </g>
      ))}
      {cutsMm.map((y) => (
        <path key={y} className={styles.cut} d={`M0 ${y}H${widthMm}`} />
      ))}
      <rect className={styles.edge} width={widthMm} height={heightMm} />
    </svg>
  );
}

/** The picture as it lies on the paper. */
function Preview({ piece, address }: Readonly<{ piece: DrawnPiece; address: string }>) {
  const width = piece.turned ? piece.heightMm : piece.widthMm;
  const height = piece.turned ? piece.widthMm : piece.heightMm;
  return (
    <image
      href={address}
      width={width}
      height={height}
      preserveAspectRatio={aspects[piece.fit]}
      transform={`${lying(piece)} translate(${-width / 2} ${-height / 2})`}
    />
  );
}

// Helpers

const aspects = { inside: 'xMidYMid meet', fill: 'xMidYMid slice', stretch: 'none' } as const;

/** Height of a line and mean advance of a letter, as shares of its size; and how much of a piece a name may take. */
const LINE = 1.1;
const ADVANCE = 0.56;
const FILLED = 0.92;

/** The name in lines that fit along the piece; none where it finds no room: beneath the drawing it stands anyway. */
function nameLines({ widthMm, heightMm, turned, name }: DrawnPiece, letterMm: number): readonly string[] {
  const along = turned ? heightMm : widthMm;
  const across = turned ? widthMm : heightMm;
  const most = Math.floor((FILLED * along) / (ADVANCE * letterMm));
  const lines: string[] = [];
  for (const word of name.split(' ')) {
    const last = lines.at(-1);
    const longer = `${last} ${word}`;
    if (last !== undefined && longer.length <= most) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  const fits =
    lines.every(({ length }) => length <= most) && lines.length * LINE * letterMm <= FILLED * across;
  return fits ? lines : [];
}

function lying({ xMm, yMm, widthMm, heightMm, turned, reversed }: DrawnPiece): string {
  const middle = `translate(${xMm + widthMm / 2} ${yMm + heightMm / 2})`;
  return `${middle}${turned ? ' rotate(90)' : ''}${reversed ? ' scale(-1 1)' : ''}`;
}
