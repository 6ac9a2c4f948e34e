import styles from './BatchMark.module.css';

export type BatchMarkKind = 'looked' | 'asked' | 'breakEven' | 'knee';

/** A quantity that means something, on the drawing. */
export interface MarkedBatch {
  readonly kind: BatchMarkKind;
  readonly n: number;
  readonly value: number;
  /** Written beside it where there is room; the answer line says the same. */
  readonly words: string;
}

/** Half the handle and its halo, px. */
const HANDLE = 13;
const HALO = 19;

/** How far words keep from a mark, px. */
export const markReach: Readonly<Record<BatchMarkKind, number>> = {
  looked: HALO + 3,
  asked: 11,
  breakEven: 10,
  knee: 11,
};

/** One of the marks of a batch, told apart by its shape: a dot, a diamond, a ring, and the handle that is dragged. */
export function BatchMark({ kind, x, y }: Readonly<{ kind: BatchMarkKind; x: number; y: number }>) {
  switch (kind) {
    case 'breakEven':
      return <circle className={styles.breakEven} cx={x} cy={y} r={6} />;
    case 'knee':
      return <path className={styles.knee} d={`M${x} ${y - 8.5}l8.5 8.5 -8.5 8.5 -8.5 -8.5z`} />;
    case 'asked':
      return <circle className={styles.asked} cx={x} cy={y} r={6.5} />;
    case 'looked':
      return (
        <g>
          <circle className={styles.halo} cx={x} cy={y} r={HALO} />
          <circle className={styles.handle} cx={x} cy={y} r={HANDLE - 1.5} />
          <path className={styles.arrows} d={`M${x - 2.5} ${y - 4}l-4 4 4 4M${x + 2.5} ${y - 4}l4 4 -4 4`} />
        </g>
      );
    default:
      return kind satisfies never;
  }
}
