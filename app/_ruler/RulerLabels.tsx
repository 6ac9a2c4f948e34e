import { placeLabels } from './placeLabels';
import styles from './RulerLabels.module.css';
import { type RulerBounds, type RulerMark, ratioOnRuler } from './rulerMark';

type RulerLabelsProps = Readonly<{
  marks: readonly RulerMark[];
  bounds: RulerBounds;
  format: (value: number) => string;
  widthPx: number;
}>;

/** Mean advance of the faces at their sizes here, in px, rounded up so that labels never touch. */
const figurePx = 7.6;
const letterPx = 5.9;
const gapPx = 12;

/** Value and name under each tick; crowded ones step aside on a leader, and where words find no room figures stay. */
export function RulerLabels({ marks, bounds, format, widthPx }: RulerLabelsProps) {
  const ticks = marks.map((mark) => ({
    mark,
    ratio: ratioOnRuler(mark.value, bounds),
    figure: format(mark.value),
  }));
  const figures = ticks.map(({ ratio, figure }) => ({ ratio, widthPx: figure.length * figurePx + gapPx }));
  const words = ticks.map(({ ratio, mark, figure }) => ({
    ratio,
    widthPx: Math.max(figure.length * figurePx, mark.label.length * letterPx) + gapPx,
  }));
  const wide = placeLabels(words, widthPx);
  const middles = wide ?? placeLabels(figures, widthPx);
  if (!middles) return null;
  return (
    <g className={styles.labels}>
      {ticks.map(({ mark, ratio, figure }, rank) => {
        const middle = (middles[rank] ?? 0) / widthPx;
        return (
          <g key={mark.id}>
            <line className={styles.leader} x1={percent(ratio)} y1="56" x2={percent(middle)} y2="63" />
            <text className={styles.figure} x={percent(middle)} y="77">
              {figure}
            </text>
            {wide && (
              <text className={styles.name} x={percent(middle)} y="93">
                {mark.label}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

// Helpers

const percent = (ratio: number) => `${(ratio * 100).toFixed(3)}%`;
