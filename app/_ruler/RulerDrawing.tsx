import { useId } from 'react';
import { type Heat, HeatStop, heats } from './HeatStop';
import { percent } from './percent';
import styles from './RulerDrawing.module.css';
import { RulerFlag } from './RulerFlag';
import { RulerLabels } from './RulerLabels';
import { type RulerBounds, type RulerMark, ratioOnRuler } from './rulerMark';

type RulerDrawingProps = Readonly<{
  /** In the order of their values. */
  marks: readonly RulerMark[];
  bounds: RulerBounds;
  flagValue: number;
  format: (value: number) => string;
  payToWorkBelow: number | null;
  widthPx: number;
  /** How much larger than usual the type is. */
  scale: number;
  /** slim has no flag and no leaders, and a knob in their place. */
  size: 'full' | 'slim';
  /** Where the labels stand, px from the left; null where they stand outside of the drawing, in equal cells. */
  middles: readonly number[] | null;
}>;

/** Heights in px at the usual size of type. */
const HIGH = { named: 100, bare: 64, slim: 36 } as const;

/** What is seen of the ruler. Everything lies by share of the width, so it holds before any script has measured. */
export function RulerDrawing(props: RulerDrawingProps) {
  const { marks, bounds, flagValue, format, payToWorkBelow, widthPx, scale, size, middles } = props;
  const id = useId();
  const at = (value: number) => percent(ratioOnRuler(value, bounds));
  const isSlim = size === 'slim';
  // The same bar, moved up where no flag stands over it.
  const barY = (isSlim ? 11 : 36) * scale;
  const barHigh = 14 * scale;
  const high = scale * (isSlim ? HIGH.slim : middles === null ? HIGH.bare : HIGH.named);
  return (
    <svg className={styles.drawing} width="100%" height={high} aria-hidden="true" focusable="false">
      <defs>
        <linearGradient id={`${id}-heat`}>
          <HeatStop heat="cold" offset="0" />
          {marks.map((mark, rank) => (
            <HeatStop key={mark.id} heat={heatOf(rank, marks.length)} offset={at(mark.value)} />
          ))}
          <HeatStop heat="scorch" offset="1" />
        </linearGradient>
        <pattern
          id={`${id}-pay`}
          width="6"
          height="6"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect className={styles.hatchGround} width="6" height="6" />
          <rect className={styles.hatchLine} width="2" height="6" />
        </pattern>
        <clipPath id={`${id}-bar`}>
          <rect y={barY} width="100%" height={barHigh} rx={barHigh / 2} />
        </clipPath>
      </defs>
      <g clipPath={`url(#${id}-bar)`}>
        <rect y={barY} width="100%" height={barHigh} fill={`url(#${id}-heat)`} />
        {payToWorkBelow !== null && (
          <rect y={barY} width={at(payToWorkBelow)} height={barHigh} fill={`url(#${id}-pay)`} />
        )}
      </g>
      <rect className={styles.edge} y={barY} width="100%" height={barHigh} rx={barHigh / 2} />
      {marks.map((mark) => (
        <line
          key={mark.id}
          className={styles.tick}
          x1={at(mark.value)}
          x2={at(mark.value)}
          y1={barY - (isSlim ? 0 : 4 * scale)}
          y2={barY + barHigh + (isSlim ? 0 : 6 * scale)}
        />
      ))}
      {!isSlim && middles !== null && <RulerLabels {...{ marks, bounds, format, widthPx, scale, middles }} />}
      {!isSlim && middles === null && (
        <g>
          {marks.map((mark, rank) => (
            <line
              key={mark.id}
              className={styles.leader}
              x1={at(mark.value)}
              y1={56 * scale}
              x2={percent((rank + 0.5) / marks.length)}
              y2={64 * scale}
            />
          ))}
        </g>
      )}
      <RulerFlag
        ratio={ratioOnRuler(flagValue, bounds)}
        text={format(flagValue)}
        {...{ widthPx, scale, size }}
      />
    </svg>
  );
}

// Helpers

/** The lowest mark is cold and the highest hot, however many there are; scorch is beyond them. */
function heatOf(rank: number, count: number): Heat {
  return heats[count < 2 ? 2 : Math.round((rank * 4) / (count - 1))] ?? 'tepid';
}
