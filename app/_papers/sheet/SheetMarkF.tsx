import { markF, placeMarkF } from '@/lib/papers/draw/markF';
import type { Reads } from '@/lib/papers/paper';
import styles from './PaperSheet.module.css';

type SheetMarkFProps = Readonly<{ x?: number; y?: number; width: number; height: number; reads: Reads }>;

/** The place of a picture that cannot be shown, with an F that lies as it does. */
export function SheetMarkF({ x = 0, y = 0, width, height, reads }: SheetMarkFProps) {
  const at = placeMarkF({ width, height });
  return (
    <>
      <rect {...{ x, y, width, height }} className={styles.place} />
      <path
        d={markF[reads]}
        className={styles.mark}
        transform={`translate(${x + at.x} ${y + at.y}) scale(${at.scale})`}
      />
    </>
  );
}
