import { useId } from 'react';
import type { CurveRow } from '@/lib/studies/curve/curveSeries';
import styles from './BatchChart.module.css';
import { BatchMark, type MarkedBatch, markReach } from './BatchMark';
import { batchTicks, ratioOfBatch } from './batchAxis';
import type { CurveScale } from './curveScale';
import { areaPath, linePath } from './linePath';
import { placeLabels } from './placeLabels';
import type { PlotMargins } from './plotMargins';

type BatchChartProps = Readonly<{
  rows: readonly CurveRow[];
  /** The one on top of all last. */
  marks: readonly MarkedBatch[];
  /** Quantities at which sheets are just used up. */
  fullSheets: readonly number[];
  scale: CurveScale;
  margins: PlotMargins;
  /** The last batch. */
  to: number;
  widthPx: number;
  heightPx: number;
  letterPx: number;
  /** Whether the line falls to the right, so that words stand clear of it. */
  falls: boolean;
  /** What is drawn upwards, and what lies below nothing. */
  upTitle: string;
  lossTitle: string | null;
  acrossTitle: string;
  tick: (value: number) => string;
}>;

/** A curve over batch sizes on a doubling scale: losses hatched and named, full sheets as ticks, marks by shape. */
export function BatchChart(props: BatchChartProps) {
  const { rows, marks, fullSheets, scale, margins, to, widthPx, heightPx, letterPx, falls, tick } = props;
  const { upTitle, lossTitle, acrossTitle } = props;
  const id = useId();
  const left = margins.left;
  const right = widthPx - margins.right;
  const top = margins.top;
  const bottom = heightPx - margins.bottom;
  const small = letterPx * 0.8125;
  const xOf = (n: number) => left + ratioOfBatch(n, to) * (right - left);
  const yOf = (value: number) => bottom - ((value - scale.min) / (scale.max - scale.min)) * (bottom - top);
  // What lies beyond the drawing is marked at its edge.
  const inPlot = (value: number) => Math.min(scale.max, Math.max(scale.min, value));
  const zero = scale.min < 0 ? yOf(Math.min(0, scale.max)) : bottom;
  const hasLoss = lossTitle !== null && scale.min < 0;
  const point = (of: (row: CurveRow) => number | null) =>
    rows.map((row) => {
      const value = of(row);
      return value === null ? null : ([xOf(row.n), yOf(value)] as const);
    });
  const placed = placeLabels(
    [...marks].reverse().map(({ kind, n, value, words }) => ({
      key: kind,
      words,
      x: xOf(n),
      y: yOf(inPlot(value)),
      away: markReach[kind],
    })),
    { left, right: right + margins.right, top: 0, bottom: bottom - 12 },
    hasLoss
      ? [
          {
            left,
            right: left + 10 + lossTitle.length * small * 0.54,
            top: zero,
            bottom: zero + letterPx * 1.5,
          },
        ]
      : [],
    letterPx * 0.875,
    falls,
  );
  const looked = marks.find(({ kind }) => kind === 'looked');
  return (
    <svg className={styles.chart} width={widthPx} height={heightPx} data-chart="batch" aria-hidden="true">
      <defs>
        <clipPath id={`${id}-plot`}>
          <rect x={left} y={top} width={Math.max(0, right - left)} height={Math.max(0, bottom - top)} />
        </clipPath>
        <pattern id={`${id}-hatch`} width="8" height="8" patternUnits="userSpaceOnUse">
          <path className={styles.hatch} d="M-2 10L10 -2M-2 2L2 -2M6 10L10 6" />
        </pattern>
      </defs>
      {hasLoss && (
        <>
          <rect className={styles.loss} x={left} y={zero} width={right - left} height={bottom - zero} />
          <rect fill={`url(#${id}-hatch)`} x={left} y={zero} width={right - left} height={bottom - zero} />
        </>
      )}
      {scale.ticks.map((value) => (
        <g key={value}>
          <path className={value === 0 ? styles.zero : styles.line} d={`M${left} ${yOf(value)}H${right}`} />
          <text className={styles.number} x={left - 8} y={yOf(value) + small * 0.35} textAnchor="end">
            {tick(value)}
          </text>
        </g>
      ))}
      {batchTicks(to, right - left, letterPx).map((n) => (
        <g key={n}>
          <path className={styles.tick} d={`M${xOf(n)} ${bottom}v6`} />
          <text className={styles.number} x={xOf(n)} y={bottom + 6 + small} textAnchor="middle">
            {n}
          </text>
        </g>
      ))}
      {fullSheets.map((n) => (
        <path key={n} className={styles.sheet} d={`M${xOf(n)} ${bottom}v-8`} />
      ))}
      {fullSheets[0] !== undefined && (
        <text className={styles.sheets} x={xOf(fullSheets[0]) - 5} y={bottom - 4} textAnchor="end">
          full sheets
        </text>
      )}
      <g clipPath={`url(#${id}-plot)`}>
        <path
          className={styles.band}
          d={areaPath(
            point(({ band }) => band?.[0] ?? null),
            point(({ band }) => band?.[1] ?? null),
          )}
        />
        <path className={styles.other} d={linePath(point(({ other }) => other))} />
        <path className={styles.price} d={linePath(point(({ price }) => price))} />
        <path className={styles.value} d={linePath(point(({ value }) => value))} />
      </g>
      {looked !== undefined && (
        <path className={styles.drop} d={`M${xOf(looked.n)} ${yOf(inPlot(looked.value))}V${bottom}`} />
      )}
      {hasLoss && (
        <text className={styles.bold} x={left + 10} y={zero + letterPx * 1.15}>
          {lossTitle}
        </text>
      )}
      {marks.map(({ kind, n, value }) => (
        <BatchMark key={kind} kind={kind} x={xOf(n)} y={yOf(inPlot(value))} />
      ))}
      {placed.map(({ key, words, x, y, anchor }) => (
        <text
          key={key}
          className={key === 'asked' ? styles.quiet : styles.bold}
          x={x}
          y={y}
          textAnchor={anchor}
        >
          {words}
        </text>
      ))}
      <text className={styles.title} x={0} y={small}>
        {upTitle}
      </text>
      <text className={styles.title} x={widthPx} y={heightPx - 3} textAnchor="end">
        {acrossTitle}
      </text>
    </svg>
  );
}
