import {
  Area,
  CartesianGrid,
  ComposedChart,
  DefaultZIndexes,
  Line,
  pattern,
  ReferenceArea,
  ReferenceDot,
  ReferenceLine,
  XAxis,
  YAxis,
} from 'recharts';
import type { CurveRow } from '@/lib/studies/curve/curveSeries';
import styles from './BatchChart.module.css';
import { BatchMark, type MarkedBatch } from './BatchMark';
import { BatchWords } from './BatchWords';
import { batchTicks } from './batchAxis';
import type { CurveScale } from './curveScale';
import { PlotTitles } from './PlotTitles';
import { acrossAxis, diagonals, plotChart, still, upAxis } from './plotLook';
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

const loss = {
  color: 'var(--well)',
  definition: pattern({ ...diagonals, color: 'var(--cold)', opacity: 0.35 }),
};

/** A curve over batch sizes on a doubling scale: losses hatched and named, full sheets as ticks, marks by shape. */
export function BatchChart(props: BatchChartProps) {
  const { rows, marks, fullSheets, scale, margins, to, widthPx, heightPx, letterPx, falls, tick } = props;
  const { upTitle, lossTitle, acrossTitle } = props;
  const { min, max, ticks } = scale;
  // What lies beyond the drawing is marked at its edge.
  const shown = marks.map((mark) => ({ ...mark, value: Math.min(max, Math.max(min, mark.value)) }));
  const looked = shown.find(({ kind }) => kind === 'looked');
  const lossWords = lossTitle !== null && min < 0 ? lossTitle : null;
  return (
    <ComposedChart
      {...plotChart}
      className={styles.chart ?? ''}
      data-chart="batch"
      width={widthPx}
      height={heightPx}
      data={rows}
      margin={{ left: 0, right: margins.right, top: margins.top, bottom: 0 }}
    >
      <CartesianGrid stroke="var(--line-2)" vertical={false} />
      {lossWords !== null && (
        <ReferenceArea
          y1={min}
          y2={0}
          fill={loss}
          fillOpacity={1}
          stroke="none"
          zIndex={DefaultZIndexes.barBackground}
        />
      )}
      <XAxis
        {...acrossAxis}
        dataKey="n"
        scale="log"
        domain={[1, to]}
        ticks={batchTicks(to, widthPx - margins.left - margins.right, letterPx)}
        height={margins.bottom}
      />
      <YAxis {...upAxis} domain={[min, max]} ticks={ticks} width={margins.left} tickFormatter={tick} />
      <Area {...still} dataKey="band" stroke="none" fill="var(--warm)" fillOpacity={0.3} />
      <ReferenceLine y={0} stroke="var(--chart-ink)" strokeWidth={1.5} />
      <Line {...still} dataKey="other" stroke="var(--time-1)" strokeWidth={2} strokeDasharray="8 4" />
      <Line {...still} dataKey="price" stroke="var(--materials-1)" strokeWidth={2} strokeDasharray="2 3" />
      <Line {...still} dataKey="value" stroke="var(--chart-line)" strokeWidth={2.6} />
      {looked !== undefined && (
        <ReferenceLine
          segment={[
            { x: looked.n, y: min },
            { x: looked.n, y: looked.value },
          ]}
          stroke="var(--chart-ink)"
          strokeWidth={1.25}
          strokeDasharray="2 3"
        />
      )}
      {fullSheets.map((n) => (
        <ReferenceDot
          key={n}
          x={n}
          y={min}
          shape={({ cx = 0, cy = 0 }) => <path className={styles.sheet} d={`M${cx} ${cy}v-8`} />}
        />
      ))}
      {shown.map(({ kind, n, value }) => (
        <ReferenceDot
          key={kind}
          x={n}
          y={value}
          ifOverflow="visible"
          shape={({ cx = 0, cy = 0 }) => <BatchMark kind={kind} x={cx} y={cy} />}
        />
      ))}
      <BatchWords {...{ rows, lossWords, letterPx, falls }} marks={shown} firstFull={fullSheets[0] ?? null} />
      <PlotTitles {...{ upTitle, acrossTitle, letterPx, heightPx }} right={widthPx} />
    </ComposedChart>
  );
}
