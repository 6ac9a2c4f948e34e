import { useId } from 'react';
import styles from './RulerDrawing.module.css';
import { RulerFlag } from './RulerFlag';
import { RulerLabels } from './RulerLabels';
import { type RulerBounds, type RulerMark, ratioOnRuler } from './rulerMark';

type RulerDrawingProps = Readonly<{
  marks: readonly RulerMark[];
  bounds: RulerBounds;
  flagValue: number;
  format: (value: number) => string;
  payToWorkBelow: number | null;
  widthPx: number;
  stale?: string | undefined;
}>;

const heats = ['cold', 'cool', 'tepid', 'warm', 'hot', 'scorch'] as const;

/** What is seen of the ruler. Everything lies by share of the width, so it holds before any script has measured. */
export function RulerDrawing(props: RulerDrawingProps) {
  const { bounds, flagValue, format, payToWorkBelow, widthPx, stale } = props;
  const id = useId();
  const marks = props.marks.toSorted((a, b) => a.value - b.value);
  const at = (value: number) => percent(ratioOnRuler(value, bounds));
  return (
    <svg className={styles.drawing} width="100%" height="98" aria-hidden="true" focusable="false">
      <defs>
        <linearGradient id={`${id}-heat`}>
          <stop offset="0" className={styles.cold} />
          {marks.map((mark, rank) => (
            <stop key={mark.id} offset={at(mark.value)} className={styles[heatOf(rank, marks.length)]} />
          ))}
          <stop offset="1" className={styles.scorch} />
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
          <rect y="36" width="100%" height="14" rx="7" />
        </clipPath>
      </defs>
      <g className={styles.body}>
        <g className={styles.bar} clipPath={`url(#${id}-bar)`}>
          <rect y="36" width="100%" height="14" fill={`url(#${id}-heat)`} />
          {payToWorkBelow !== null && (
            <rect y="36" width={at(payToWorkBelow)} height="14" fill={`url(#${id}-pay)`} />
          )}
        </g>
        <rect className={styles.edge} y="36" width="100%" height="14" rx="7" />
        {marks.map((mark) => (
          <line
            key={mark.id}
            className={styles.tick}
            x1={at(mark.value)}
            x2={at(mark.value)}
            y1="32"
            y2="56"
          />
        ))}
        <RulerLabels {...{ marks, bounds, format, widthPx }} />
        {stale !== undefined && (
          <text
            className={styles.stale}
            x={ratioOnRuler(flagValue, bounds) > 0.5 ? '0%' : '100%'}
            y="18"
            textAnchor={ratioOnRuler(flagValue, bounds) > 0.5 ? 'start' : 'end'}
          >
            {stale}
          </text>
        )}
        <RulerFlag ratio={ratioOnRuler(flagValue, bounds)} text={format(flagValue)} widthPx={widthPx} />
      </g>
    </svg>
  );
}

// Helpers

const percent = (ratio: number) => `${(ratio * 100).toFixed(3)}%`;

/** The lowest mark is cold and the highest hot, however many there are; scorch is beyond them. */
function heatOf(rank: number, count: number): (typeof heats)[number] {
  return heats[count < 2 ? 2 : Math.round((rank * 4) / (count - 1))] ?? 'tepid';
}
