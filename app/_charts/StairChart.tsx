import {
  Area,
  CartesianGrid,
  ComposedChart,
  Line,
  pattern,
  ReferenceArea,
  ReferenceDot,
  ReferenceLine,
  XAxis,
  YAxis,
} from 'recharts';
import { PlotTitles } from './PlotTitles';
import { acrossAxis, diagonals, plotChart, still, upAxis } from './plotLook';
import styles from './StairChart.module.css';
import { StairWords } from './StairWords';
import { acrossTicks, upTicks } from './stairAxes';
import type { StairsToDraw } from './stairsToDraw';

type StairChartProps = Readonly<{
  stairs: StairsToDraw;
  widthPx: number;
  heightPx: number;
  letterPx: number;
  upTitle: string;
  acrossTitle: string;
  tick: (value: number) => string;
}>;

const fallen = {
  color: 'var(--stop-ground)',
  definition: pattern({ ...diagonals, color: 'var(--stop)', opacity: 1, strokeWidth: 2 }),
};

/** What orders pay by a list, as a staircase over what each must bring; where a larger order pays less is hatched. */
export function StairChart({ stairs, widthPx, heightPx, letterPx, tick, ...titles }: StairChartProps) {
  const { points, held, falls, job } = stairs;
  const to = Math.max(2, points.at(-1)?.n ?? 2);
  const totals = points.flatMap(({ pays, need }) => [pays ?? 0, need]);
  const ticks = upTicks(Math.max(job?.total ?? 0, ...totals));
  const left = Math.ceil(letterPx * (0.5 * Math.max(...ticks.map((value) => tick(value).length)) + 0.9));
  const beside = letterPx * 0.6;
  return (
    <ComposedChart
      {...plotChart}
      className={styles.chart ?? ''}
      data-chart="stairs"
      width={widthPx}
      height={heightPx}
      data={points}
      margin={{ left: 0, right: beside, top: letterPx * 2, bottom: 0 }}
    >
      <CartesianGrid stroke="var(--line-2)" vertical={false} />
      <XAxis
        {...acrossAxis}
        dataKey="n"
        domain={[1, to]}
        ticks={acrossTicks(to, widthPx - left - beside, letterPx)}
        height={letterPx * 2.9}
      />
      <YAxis {...upAxis} domain={[0, ticks.at(-1) ?? 1]} ticks={ticks} width={left} tickFormatter={tick} />
      <Area {...still} dataKey="need" stroke="none" fill="var(--well)" fillOpacity={0.65} />
      {falls.map(({ from, cheaperAt }) => (
        <ReferenceArea key={from} x1={from} x2={cheaperAt} fill={fallen} fillOpacity={1} stroke="none" />
      ))}
      <ReferenceLine y={0} stroke="var(--ink-2)" strokeWidth={1.5} />
      {falls.length > 0 && (
        <Line
          {...still}
          dataKey="fullCost"
          stroke="var(--ink-2)"
          strokeWidth={1.75}
          strokeDasharray="1.5 3.5"
        />
      )}
      <Line {...still} dataKey="need" stroke="var(--chart-need)" strokeWidth={2} strokeDasharray="6 4" />
      <Line {...still} dataKey="pays" stroke="var(--chart-line)" strokeWidth={2.6} />
      {held.map(({ from, to: last, pays }) => (
        <ReferenceLine
          key={from}
          segment={[
            { x: from, y: pays },
            { x: Math.min(to, last + 1), y: pays },
          ]}
          stroke="var(--chart-line)"
          strokeWidth={6}
        />
      ))}
      {job !== null && (
        <>
          <ReferenceLine
            segment={[
              { x: job.n, y: 0 },
              { x: job.n, y: job.total },
            ]}
            stroke="var(--ink)"
            strokeWidth={1.25}
          />
          <ReferenceDot
            x={job.n}
            y={job.total}
            r={6.5}
            fill="var(--sheet)"
            stroke="var(--ink)"
            strokeWidth={2.5}
          />
        </>
      )}
      <StairWords {...{ stairs, letterPx }} />
      <PlotTitles {...titles} {...{ letterPx, heightPx }} right={widthPx - beside} />
    </ComposedChart>
  );
}
