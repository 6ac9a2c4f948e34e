'use client';

import { useRef } from 'react';
import { percent } from '@/app/_ruler/percent';
import { placeLabels } from '@/app/_ruler/placeLabels';
import { useTextScale } from '@/app/_ruler/useTextScale';
import { useWidth } from '@/app/_ruler/useWidth';
import { type BreakMark, barWords } from '@/app/_words/stall/count/breakEvenWords';
import styles from './Head.module.css';

/** Room behind the last mark, share of it. */
const BEYOND = 1.12;
/** Mean advance of the bold face at its size here, in px, rounded up so that labels never touch. */
const LETTER_PX = 7.8;
const GAP_PX = 8;
const [BAR_PX, LEADER_PX, LINE_PX] = [16, 6, 15];

/** How far the day is, against the pieces at which each sum is earned. */
export function BreakEvenBar({ marks, sold }: Readonly<{ marks: readonly BreakMark[]; sold: number }>) {
  const box = useRef<HTMLDivElement>(null);
  const widthPx = useWidth(box, 358);
  const scale = useTextScale(box);
  const last = marks.at(-1)?.pieces ?? 0;
  const whole = Math.max(1, last * BEYOND, sold);
  const ratio = (pieces: number) => Math.max(0, pieces) / whole;
  const at = (pieces: number) => percent(ratio(pieces));
  const labels = labelsOf(marks, ratio, widthPx / scale);
  const lines = labels?.lines ?? 0;
  const high = BAR_PX + (lines === 0 ? 0 : LEADER_PX + lines * LINE_PX);
  return (
    <div className={styles.bar} ref={box}>
      <svg className={styles.drawing} role="img" aria-label={barWords(marks, sold)} height={high * scale}>
        <defs>
          <linearGradient id="heat-of-the-day" x1="0" x2="1" y1="0" y2="0">
            <stop className={styles.cold} offset="0" />
            <stop className={styles.warm} offset="1" />
          </linearGradient>
        </defs>
        <rect className={styles.ground} width="100%" height={BAR_PX * scale} rx="4" />
        <rect className={styles.earned} width={at(sold)} height={BAR_PX * scale} rx="4" />
        {marks.map(({ pieces, words }) => (
          <line
            key={words}
            className={styles.mark}
            x1={at(pieces)}
            x2={at(pieces)}
            y1="0"
            y2={BAR_PX * scale}
          />
        ))}
        <rect className={styles.edge} width="100%" height={BAR_PX * scale} rx="4" />
        {labels?.middles.map((middlePx, place) => {
          const mark = marks[place];
          if (mark === undefined) return null;
          const x = middlePx * scale;
          return (
            <g key={mark.words}>
              <line
                className={styles.leader}
                x1={at(mark.pieces)}
                x2={x}
                y1={BAR_PX * scale}
                y2={(BAR_PX + LEADER_PX) * scale}
              />
              {labelLines(mark, sold, lines).map((line, under) => (
                <text
                  key={line}
                  className={mark.pieces <= sold ? styles.reached : styles.label}
                  x={x}
                  y={(BAR_PX + LEADER_PX + (under + 0.8) * LINE_PX) * scale}
                >
                  {line}
                </text>
              ))}
            </g>
          );
        })}
      </svg>
      {labels === null && (
        <p className={styles.marks} aria-hidden="true">
          {marks.map((mark) => (
            <span key={mark.words}>{labelLines(mark, sold, 1)}</span>
          ))}
        </p>
      )}
    </div>
  );
}

// Helpers

/** In one line, or the figure above its words where that takes too much room. A tick behind it tells that it is reached. */
function labelLines({ pieces, words }: BreakMark, sold: number, lines: number): readonly string[] {
  const tick = pieces <= sold ? ' ✓' : '';
  return lines === 1 ? [`${pieces} ${words}${tick}`] : [`${pieces}${tick}`, words];
}

/**
 * Each label as near under its mark as it goes without touching the next, with room for its tick before it is reached, so
 * that nothing moves under the thumb.
 *
 * @param rowPx at the usual size of type
 * @returns in as few lines as go, middles in px from the left; null where even two are too short
 */
function labelsOf(
  marks: readonly BreakMark[],
  ratio: (pieces: number) => number,
  rowPx: number,
): { readonly lines: 1 | 2; readonly middles: readonly number[] } | null {
  for (const lines of [1, 2] as const) {
    const places = marks.map((mark) => ({
      ratio: ratio(mark.pieces),
      widthPx:
        Math.max(...labelLines(mark, mark.pieces, lines).map((line) => line.length)) * LETTER_PX + GAP_PX,
    }));
    const middles = placeLabels(places, rowPx);
    if (middles !== null) return { lines, middles };
  }
  return null;
}
