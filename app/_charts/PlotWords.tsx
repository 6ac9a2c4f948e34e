import type { ReactNode } from 'react';
import { DefaultZIndexes, ZIndexLayer } from 'recharts';
import styles from './PlotWords.module.css';
import type { PlacedLabel } from './placeLabels';

/** How words on a drawing look. */
type WordsLook = 'bold' | 'quiet' | 'lost' | 'sheets';

type PlotWordsProps = Readonly<{
  placed: readonly PlacedLabel[];
  lookOf: (key: string) => WordsLook;
  sizePx: number;
}>;

/** Words on a drawing, on top of all. */
export function PlotWords({ placed, lookOf, sizePx }: PlotWordsProps): ReactNode {
  return (
    <ZIndexLayer zIndex={DefaultZIndexes.label}>
      {placed.map(({ key, words, x, y, anchor }) => (
        <text key={key} className={styles[lookOf(key)]} fontSize={sizePx} x={x} y={y} textAnchor={anchor}>
          {words}
        </text>
      ))}
    </ZIndexLayer>
  );
}
