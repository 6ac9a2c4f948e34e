import { useId } from 'react';
import styles from './StairChart.module.css';
import { type StairsToDraw, stairGeometry } from './stairGeometry';

type StairChartProps = Readonly<{
  stairs: StairsToDraw;
  widthPx: number;
  heightPx: number;
  letterPx: number;
  upTitle: string;
  acrossTitle: string;
  tick: (value: number) => string;
}>;

/** What orders pay by a list, as a staircase over what each must bring; where a larger order pays less is hatched. */
export function StairChart(props: StairChartProps) {
  const { stairs, widthPx, heightPx, letterPx, upTitle, acrossTitle, tick } = props;
  const id = useId();
  const small = letterPx * 0.8125;
  const most = Math.max(...stairs.points.map(({ pays, need }) => Math.max(pays ?? 0, need)), 1);
  const left = Math.ceil(letterPx * (0.5 * tick(Math.ceil(most)).length + 0.9));
  const top = letterPx * 2;
  const bottom = heightPx - letterPx * 2.9;
  const right = widthPx - letterPx * 0.6;
  const drawn = stairGeometry(stairs, { left, right, top, bottom, letterPx });
  const isTrouble = stairs.falls.length > 0;
  return (
    <svg className={styles.chart} width={widthPx} height={heightPx} data-chart="stairs" aria-hidden="true">
      <defs>
        <pattern id={`${id}-fall`} width="8" height="8" patternUnits="userSpaceOnUse">
          <path className={styles.hatch} d="M-2 10L10 -2M-2 2L2 -2M6 10L10 6" />
        </pattern>
      </defs>
      <path className={styles.ground} d={drawn.ground} />
      {drawn.up.map(({ value, y }) => (
        <g key={value}>
          <path className={value === 0 ? styles.zero : styles.line} d={`M${left} ${y}H${right}`} />
          <text className={styles.number} x={left - 8} y={y + small * 0.35} textAnchor="end">
            {tick(value)}
          </text>
        </g>
      ))}
      {drawn.falls.map(({ x, width }) => (
        <g key={x}>
          <rect className={styles.fall} x={x} y={top} width={width} height={bottom - top} />
          <rect fill={`url(#${id}-fall)`} x={x} y={top} width={width} height={bottom - top} />
        </g>
      ))}
      {drawn.across.map(({ n, x }) => (
        <g key={n}>
          <path className={styles.tick} d={`M${x} ${bottom}v6`} />
          <text className={styles.number} x={x} y={bottom + 6 + small} textAnchor="middle">
            {n}
          </text>
        </g>
      ))}
      {isTrouble && <path className={styles.cost} d={drawn.fullCost} />}
      <path className={styles.need} d={drawn.need} />
      <path className={styles.list} d={drawn.list} />
      {drawn.held.map((d) => (
        <path key={d} className={styles.held} d={d} />
      ))}
      {drawn.job !== null && (
        <>
          <path className={styles.drop} d={`M${drawn.job.x} ${drawn.job.y}V${bottom}`} />
          <circle className={styles.job} cx={drawn.job.x} cy={drawn.job.y} r={6.5} />
        </>
      )}
      {drawn.labels.map(({ key, words, x, y, anchor }) => (
        <text
          key={key}
          className={key === 'job' ? styles.bold : key.startsWith('fall') ? styles.lost : styles.quiet}
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
      <text className={styles.title} x={right} y={heightPx - 3} textAnchor="end">
        {acrossTitle}
      </text>
    </svg>
  );
}
