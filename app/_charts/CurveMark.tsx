import styles from './CurveMark.module.css';

export type CurveMarkKind = 'looked' | 'asked' | 'breakEven' | 'knee' | 'spot';

/** A quantity that means something, on the drawing. */
export interface MarkedBatch {
  readonly kind: CurveMarkKind;
  readonly n: number;
  readonly value: number;
  /** Written beside it; none where a sentence beneath says it. */
  readonly words?: string | undefined;
}

type CurveMarkProps = Readonly<{
  mark: MarkedBatch;
  x: number;
  y: number;
  /** Left and right end of the plot, px: words stay between them. */
  ends: readonly [number, number];
  /** Whether the line falls to the right, so that words stand clear of it above. */
  falls: boolean;
  letterPx: number;
}>;

/** Mean advance of a letter of the labels, as a share of the page's own. */
const LETTER = 0.46;

/** A dot, a ring or a tick with its words. */
export function CurveMark({ mark, x, y, ends, falls, letterPx }: CurveMarkProps) {
  const { kind, words } = mark;
  const wide = (words?.length ?? 0) * letterPx * LETTER;
  const isLooked = kind === 'looked';
  const above = kind === 'spot' || isLooked !== falls;
  // Words stay between the ends of the plot, at the side of their mark where there is room.
  const start = isLooked ? x - wide / 2 : x + 9;
  const textX = Math.max(ends[0], Math.min(ends[1] - wide, start));
  const away = letterPx * aways[kind];
  return (
    <g>
      {shapes[kind](x, y)}
      {/* Where letters are so large that words find no room, the sentences beneath say the same. */}
      {words !== undefined && wide <= ends[1] - ends[0] && (
        <text
          className={isLooked ? styles.lookedWords : styles.words}
          x={textX}
          y={above ? y - away : y + away + letterPx * 0.7}
        >
          {words}
        </text>
      )}
    </g>
  );
}

// Helpers

/** How far words stand off, in letters; those at a line across keep clear of it. */
const aways: Readonly<Record<CurveMarkKind, number>> = {
  looked: 0.95,
  asked: 0.6,
  breakEven: 1,
  knee: 0.6,
  spot: 0.8,
};

const shapes: Readonly<Record<CurveMarkKind, (x: number, y: number) => React.ReactElement>> = {
  looked: (x, y) => (
    <>
      <circle className={styles.ring} cx={x} cy={y} r={13} />
      <circle className={styles.looked} cx={x} cy={y} r={7.5} />
    </>
  ),
  asked: (x, y) => <circle className={styles.asked} cx={x} cy={y} r={4.5} />,
  breakEven: (x, y) => <circle className={styles.breakEven} cx={x} cy={y} r={5} />,
  knee: (x, y) => <path className={styles.knee} d={`M${x} ${y - 6.5}l6.5 6.5 -6.5 6.5 -6.5 -6.5z`} />,
  spot: (x, y) => <path className={styles.spot} d={`M${x} ${y}v-9`} />,
};
