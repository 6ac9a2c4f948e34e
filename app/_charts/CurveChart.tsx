'use client';

import {
  Area,
  CartesianGrid,
  ComposedChart,
  Line,
  ReferenceArea,
  ReferenceDot,
  ReferenceLine,
  XAxis,
  YAxis,
} from 'recharts';
import styles from './CurveChart.module.css';
import { curvePlot } from './curvePlot';

export interface CurveDatum {
  readonly n: number;
  readonly value: number;
  /** Between what it lies with little and with much spoiled; absent where that was not worked out. */
  readonly band?: readonly [number, number] | undefined;
  /** A second figure of the same job: the price over its cost. */
  readonly second?: number | undefined;
  /** The job made another way. */
  readonly variant?: number | undefined;
}

export interface CurveMark {
  readonly kind: 'asked' | 'breakEven' | 'knee' | 'spot';
  readonly n: number;
  readonly value: number;
  /** Drawn beside it; none for the small ones. */
  readonly label?: string | undefined;
}

type CurveChartProps = Readonly<{
  data: readonly CurveDatum[];
  marks: readonly CurveMark[];
  bounds: readonly [number, number];
  to: number;
  widthPx: number;
  heightPx: number;
  tick: (value: number) => string;
}>;

/** A curve over batch sizes: the band it may lie in, what is below nothing greyed, and the quantities that mean something. */
export function CurveChart({ data, marks, bounds, to, widthPx, heightPx, tick }: CurveChartProps) {
  const { left, right, top, bottom } = curvePlot;
  const [low, high] = bounds;
  const inside = (value: number) => Math.min(high, Math.max(low, value));
  return (
    <ComposedChart
      className={styles.chart ?? ''}
      width={widthPx}
      height={heightPx}
      data={[...data]}
      margin={{ left: 0, right, top, bottom: 0 }}
      accessibilityLayer={false}
    >
      <CartesianGrid stroke="var(--line-2)" vertical={false} />
      {low < 0 && (
        <ReferenceArea y1={low} y2={Math.min(0, high)} fill="var(--well)" fillOpacity={0.7} stroke="none" />
      )}
      <XAxis
        dataKey="n"
        type="number"
        domain={[1, to]}
        ticks={ticksTo(to, widthPx)}
        height={bottom}
        tickLine={false}
        axisLine={false}
      />
      <YAxis
        type="number"
        domain={[low, high]}
        allowDataOverflow
        width={left}
        tickFormatter={tick}
        tickLine={false}
        axisLine={false}
        tickCount={5}
      />
      <Area
        dataKey="band"
        stroke="none"
        fill="var(--warm)"
        fillOpacity={0.28}
        isAnimationActive={false}
        connectNulls
        activeDot={false}
      />
      {low < 0 && <ReferenceLine y={0} stroke="var(--ink-2)" strokeDasharray="2 3" />}
      <Line
        dataKey="variant"
        stroke="var(--time-1)"
        strokeWidth={2}
        strokeDasharray="7 4"
        dot={false}
        isAnimationActive={false}
        activeDot={false}
      />
      <Line
        dataKey="second"
        stroke="var(--materials-1)"
        strokeWidth={2}
        strokeDasharray="2 3"
        dot={false}
        isAnimationActive={false}
        activeDot={false}
      />
      <Line
        dataKey="value"
        stroke="var(--hot)"
        strokeWidth={2.5}
        dot={false}
        isAnimationActive={false}
        activeDot={false}
      />
      {marks.map(({ kind, n, value, label }) => (
        <ReferenceDot
          key={`${kind} ${n}`}
          x={n}
          y={inside(value)}
          {...dots[kind]}
          ifOverflow="visible"
          {...(label === undefined
            ? {}
            : {
                label: {
                  value: label,
                  // Near the right edge the words go to the left of their dot.
                  position: n > to * 0.62 ? 'left' : kind === 'asked' ? 'top' : 'right',
                  offset: 12,
                  className: (kind === 'asked' ? styles.askedLabel : styles.label) ?? '',
                },
              })}
        />
      ))}
    </ComposedChart>
  );
}

// Helpers

const dots = {
  asked: { r: 7, fill: 'var(--sheet)', stroke: 'var(--ink)', strokeWidth: 2.5 },
  breakEven: { r: 5, fill: 'var(--ink)', stroke: 'none' },
  knee: { r: 5, fill: 'var(--warm)', stroke: 'var(--ink)', strokeWidth: 1.5 },
  spot: { r: 3.5, fill: 'var(--sheet)', stroke: 'var(--materials-1)', strokeWidth: 2 },
} as const;

/** Dozens, as many as there is room for. */
function ticksTo(to: number, widthPx: number): number[] {
  const most = Math.max(2, Math.floor(widthPx / 70));
  const step = [12, 24, 48, 60, 96, 120, 240].find((dozens) => to / dozens <= most) ?? 480;
  const ticks = [1];
  for (let n = step; n <= to - step * 0.4; n += step) ticks.push(n);
  return [...ticks, to];
}
