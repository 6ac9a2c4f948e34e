'use client';

import { useId, useRef } from 'react';
import { HeatStop, heats } from '@/app/_ruler/HeatStop';
import { percent } from '@/app/_ruler/percent';
import { placeLabels } from '@/app/_ruler/placeLabels';
import { rulerBounds } from '@/app/_ruler/rulerBounds';
import { type RulerMark, ratioOnRuler } from '@/app/_ruler/rulerMark';
import { useTextScale } from '@/app/_ruler/useTextScale';
import { useWidth } from '@/app/_ruler/useWidth';
import styles from './PiecesRuler.module.css';

type PiecesRulerProps = Readonly<{
  /** Pieces from which on something is earned back, in rising order; their figures are whole. */
  breakEvens: readonly RulerMark[];
  /** Pieces sold in a weather, the likeliest first. */
  weathers: readonly RulerMark[];
  /** Beside the title: which weathers these are, of so many; null where they are all. */
  note?: (shown: number) => string | null;
  /** A figure as it is written. */
  format: (pieces: number) => string;
}>;

/** Mean advance of the faces at their sizes here, in px, rounded up so that labels never touch. */
const LETTER_PX = 7.4;
const PLATE_PX = 8.6;
const GAP_PX = 10;
const PLATE_PADDING_PX = 18;

/** Pieces sold from left to right: what each earns back beneath the bar, how far each weather comes above it. */
export function PiecesRuler({ breakEvens, weathers, note, format }: PiecesRulerProps) {
  const box = useRef<HTMLDivElement>(null);
  const widthPx = useWidth(box, 480);
  const scale = useTextScale(box);
  const id = useId();
  const bounds = rulerBounds([...breakEvens, ...weathers].map(({ value }) => value));
  const at = (value: number) => percent(ratioOnRuler(value, bounds));
  const platesOf = (marks: readonly RulerMark[]) =>
    marks.map(({ label, value }) => ({
      ratio: ratioOnRuler(value, bounds),
      widthPx: (`${label} ${format(value)}`.length * PLATE_PX + PLATE_PADDING_PX) * scale,
    }));
  // Where not all are drawn anyway, only as many as have room for their names: none is named beneath and not on the bar.
  const isOfMore = note?.(weathers.length) != null;
  const above = withRoom(weathers, isOfMore, (marks) => placeLabels(platesOf(marks), widthPx) !== null);
  const plates = platesOf(above);
  const names = breakEvens.map(({ label, value }) => ({
    ratio: ratioOnRuler(value, bounds),
    widthPx: (Math.max(label.length * LETTER_PX, format(value).length * PLATE_PX) + GAP_PX) * scale,
  }));
  const told = note?.(above.length) ?? null;
  const plateAt = placeLabels(plates, widthPx);
  const nameAt = placeLabels(names, widthPx);
  const barY = plateAt === null ? 4 : 40;
  const high = barY + (nameAt === null ? 24 : 62);
  return (
    <div className={styles.ruler} ref={box}>
      <p className={styles.title}>pieces sold{told !== null && `, ${told}`}</p>
      <svg className={styles.drawing} width="100%" height={high * scale} aria-hidden="true" focusable="false">
        <defs>
          <linearGradient id={`${id}-heat`}>
            {heats.map((heat, place) => (
              <HeatStop key={heat} heat={heat} offset={percent(place / (heats.length - 1))} />
            ))}
          </linearGradient>
        </defs>
        <rect
          className={styles.bar}
          y={barY * scale}
          width="100%"
          height={14 * scale}
          rx={7 * scale}
          fill={`url(#${id}-heat)`}
        />
        {breakEvens.map((mark, place) => (
          <g key={mark.id}>
            <line
              className={styles.tick}
              x1={at(mark.value)}
              x2={at(mark.value)}
              y1={barY * scale}
              y2={(barY + 19) * scale}
            />
            {nameAt !== null && (
              <>
                <line
                  className={styles.leader}
                  x1={at(mark.value)}
                  x2={percent((nameAt[place] ?? 0) / widthPx)}
                  y1={(barY + 19) * scale}
                  y2={(barY + 25) * scale}
                />
                <text
                  className={styles.figure}
                  x={percent((nameAt[place] ?? 0) / widthPx)}
                  y={(barY + 39) * scale}
                >
                  {format(mark.value)}
                </text>
                <text
                  className={styles.name}
                  x={percent((nameAt[place] ?? 0) / widthPx)}
                  y={(barY + 55) * scale}
                >
                  {mark.label}
                </text>
              </>
            )}
          </g>
        ))}
        {above.map((mark, place) => {
          const plate = plates[place]?.widthPx ?? 0;
          const middle = (plateAt?.[place] ?? 0) / widthPx;
          return (
            <g key={mark.id}>
              <line
                className={styles.sold}
                x1={at(mark.value)}
                x2={at(mark.value)}
                y1={(barY - (plateAt === null ? 4 : 6)) * scale}
                y2={(barY + 14) * scale}
              />
              {plateAt !== null && (
                <>
                  <line
                    className={styles.sold}
                    x1={percent(middle)}
                    x2={at(mark.value)}
                    y1={28 * scale}
                    y2={(barY - 6) * scale}
                  />
                  <rect
                    className={styles.plate}
                    x={(plateAt[place] ?? 0) - (plate - 6 * scale) / 2}
                    y={2 * scale}
                    width={plate - 6 * scale}
                    height={26 * scale}
                    rx={4 * scale}
                  />
                  <text className={styles.plateText} x={percent(middle)} y={20 * scale}>
                    {mark.label} {format(mark.value)}
                  </text>
                </>
              )}
            </g>
          );
        })}
      </svg>
      <ul className={plateAt !== null && nameAt !== null ? 'visuallyHidden' : styles.told}>
        <Told marks={above} isDrawn={plateAt !== null} format={format} />
        <Told marks={breakEvens} isDrawn={nameAt !== null} format={format} />
      </ul>
    </div>
  );
}

// Helpers

/** Fewer than this tell nothing of a spread: rather all stand in the list beneath, unnamed on the ruler. */
const LEAST = 2;

/** @returns the first marks in rising order: as many as have room for their names where some may go, all where even two have none. */
function withRoom(
  marks: readonly RulerMark[],
  mayDrop: boolean,
  hasRoom: (rising: readonly RulerMark[]) => boolean,
): readonly RulerMark[] {
  const rising = (count: number) => marks.slice(0, count).toSorted((one, other) => one.value - other.value);
  for (let count = marks.length; mayDrop && count >= LEAST; count--)
    if (hasRoom(rising(count))) return rising(count);
  return rising(marks.length);
}

type ToldProps = Readonly<{
  marks: readonly RulerMark[];
  isDrawn: boolean;
  format: (pieces: number) => string;
}>;

/** Marks in words: for those who see the drawing only where it had no room for their names. */
const Told = ({ marks, isDrawn, format }: ToldProps) =>
  marks.map(({ id, label, value }) => (
    <li key={id} className={isDrawn ? 'visuallyHidden' : undefined}>
      {label} <strong>{format(value)}</strong>
    </li>
  ));
