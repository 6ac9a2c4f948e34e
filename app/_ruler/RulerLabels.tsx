import { percent } from './percent';
import styles from './RulerLabels.module.css';
import { type RulerBounds, type RulerMark, ratioOnRuler } from './rulerMark';

type RulerLabelsProps = Readonly<{
  /** In the order of their values. */
  marks: readonly RulerMark[];
  bounds: RulerBounds;
  format: (value: number) => string;
  widthPx: number;
  scale: number;
  /** Where each label stands, px from the left. */
  middles: readonly number[];
}>;

/** Figure and name under each tick; crowded ones step aside on a leader. */
export function RulerLabels({ marks, bounds, format, widthPx, scale, middles }: RulerLabelsProps) {
  return (
    <g className={styles.labels}>
      {marks.map((mark, at) => {
        const middle = percent((middles[at] ?? 0) / widthPx);
        return (
          <g key={mark.id}>
            <line
              className={styles.leader}
              x1={percent(ratioOnRuler(mark.value, bounds))}
              y1={56 * scale}
              x2={middle}
              y2={63 * scale}
            />
            <text className={styles.figure} x={middle} y={78 * scale}>
              {format(mark.value)}
            </text>
            <text className={styles.name} x={middle} y={95 * scale}>
              {mark.label}
            </text>
          </g>
        );
      })}
    </g>
  );
}
