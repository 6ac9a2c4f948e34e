'use client';

import { useState } from 'react';
import { classes } from './classes';
import styles from './HeatFigure.module.css';

type HeatFigureProps = Readonly<{
  text: string;
  /** display is for the big figures in the heading face. */
  face?: 'text' | 'display';
  /** Which figure of the job as it stands this is: all that say the same are to be one. */
  figure?: 'price' | 'pay' | 'margin' | 'total' | undefined;
}>;

/** A figure that glows for a moment when it changes. */
export function HeatFigure({ text, face = 'text', figure }: HeatFigureProps) {
  const [seen, setSeen] = useState(text);
  const [changes, setChanges] = useState(0);
  if (text !== seen) {
    setSeen(text);
    setChanges(changes + 1);
  }
  // Two names for one glow: a class that stays would not start it again.
  const glow = changes === 0 ? undefined : changes % 2 ? styles.glow : styles.glowAgain;
  return (
    <span className={classes(styles.figure, styles[face], glow)} data-figure={figure}>
      {text}
    </span>
  );
}
