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
import type { CurveRow } from '@/lib/studies/curve/curveSeries';
import { batchTicks } from './batchTicks';
import styles from './CurveChart.module.css';
import { CurveMark, type MarkedBatch } from './CurveMark';
import type { CurveScale } from './curveScale';
import type { PlotMargins } from './plotMargins';

type CurveChartProps = Readonly<{
  rows: readonly CurveRow[];
  marks: readonly MarkedBatch[];
  scale: CurveScale;
  margins: PlotMargins;
  /** The last batch. */
  to: number;
  widthPx: number;
  heightPx: number;
  letterPx: number;
  falls: boolean;
  tick: (value: number) => string;
}>;

const still = { dot: false, activeDot: false, isAnimationActive: false } as const;
const bare = { tickLine: false, axisLine: false, interval: 0, tick: { fill: 'var(--ink-2)' } } as const;

/** A curve over batch sizes: the band it may lie in, what is below nothing greyed, and what its quantities mean. */
export function CurveChart(props: CurveChartProps) {
  const { rows, marks, scale, margins, to, widthPx, heightPx, letterPx, falls, tick } = props;
  const { min, max, ticks } = scale;
  const ends = [margins.left, widthPx - margins.right] as const;
  return (
    <ComposedChart
      className={styles.chart ?? ''}
      width={widthPx}
      height={heightPx}
      data={[...rows]}
      margin={{ left: 0, right: margins.right, top: margins.top, bottom: 0 }}
      accessibilityLayer={false}
    >
      <CartesianGrid stroke="var(--line-2)" vertical={false} />
      {min < 0 && <ReferenceArea y1={min} y2={Math.min(0, max)} fill="var(--well)" fillOpacity={0.75} />}
      <XAxis
        {...bare}
        dataKey="n"
        type="number"
        domain={[1, to]}
        ticks={batchTicks(to, ends[1] - ends[0], letterPx)}
        height={margins.bottom}
      />
      <YAxis
        {...bare}
        type="number"
        domain={[min, max]}
        ticks={[...ticks]}
        width={margins.left}
        tickFormatter={tick}
        allowDataOverflow
      />
      <Area {...still} dataKey="band" stroke="none" fill="var(--warm)" fillOpacity={0.3} />
      {min < 0 && <ReferenceLine y={0} stroke="var(--ink-2)" strokeDasharray="2 3" />}
      <Line {...still} dataKey="other" stroke="var(--time-1)" strokeWidth={2} strokeDasharray="8 4" />
      <Line {...still} dataKey="price" stroke="var(--materials-1)" strokeWidth={2} strokeDasharray="2 3" />
      <Line {...still} dataKey="value" stroke="var(--hot)" strokeWidth={2.5} />
      {marks.map((mark) => (
        <ReferenceDot
          key={`${mark.kind} ${mark.n}`}
          x={mark.n}
          // What lies beyond the drawing is marked at its edge.
          y={mark.kind === 'spot' ? min : Math.min(max, Math.max(min, mark.value))}
          ifOverflow="visible"
          shape={({ cx, cy }) => <CurveMark {...{ mark, ends, falls, letterPx }} x={cx ?? 0} y={cy ?? 0} />}
        />
      ))}
    </ComposedChart>
  );
}
