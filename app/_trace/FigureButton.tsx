'use client';

import { classes } from '@/app/_controls/classes';
import { HeatFigure } from '@/app/_controls/HeatFigure';
import type { FigureRef } from '@/lib/grid/traceFigure';
import styles from './FigureButton.module.css';
import type { OpenFigure } from './useOpenFigure';

type FigureButtonProps = Readonly<{
  figure: FigureRef;
  /** What it is, for whoever does not see the row and column it stands in. */
  name: string;
  text: string;
  opens: OpenFigure;
  strong?: boolean;
}>;

/** A figure that opens to its sum. */
export function FigureButton({ figure, name, text, opens, strong = false }: FigureButtonProps) {
  const isOpen = opens.isOpen(figure);
  return (
    <button
      className={classes(styles.figure, strong && styles.strong)}
      type="button"
      data-opens="sum"
      id={opens.buttonId(figure)}
      aria-label={`${name}: ${text}`}
      aria-expanded={isOpen}
      aria-controls={isOpen ? opens.panelId : undefined}
      onClick={() => opens.toggle(figure)}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !isOpen) return;
        event.stopPropagation();
        opens.close();
      }}
    >
      <HeatFigure text={text} />
    </button>
  );
}
