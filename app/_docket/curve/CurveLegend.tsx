import type { CurveMeasure } from '@/lib/studies/curve/curveSeries';
import styles from './CurveLegend.module.css';

type CurveLegendProps = Readonly<{
  measure: CurveMeasure;
  /** The job made another way; null where nothing is laid over. */
  otherName: string | null;
  hasBand: boolean;
}>;

/** What the lines of the drawing are, where there are several; told apart by their dashes too. */
export function CurveLegend({ measure, otherName, hasBand }: CurveLegendProps) {
  const entries = [
    { kind: 'value', name: measure === 'each' ? 'full cost a piece' : 'this job' },
    ...(measure === 'each' ? [{ kind: 'price', name: 'price a piece' }] : []),
    ...(otherName === null ? [] : [{ kind: 'other', name: otherName }]),
    ...(hasBand ? [{ kind: 'band', name: 'if little or much is spoiled' }] : []),
  ] as const;
  if (entries.length === 1) return null;
  return (
    <ul className={styles.legend}>
      {entries.map(({ kind, name }) => (
        <li className={styles.entry} key={kind}>
          <svg className={styles.swatch} viewBox="0 0 28 12" aria-hidden="true" focusable="false">
            <path className={styles[kind]} d="M0 6h28" />
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}
