'use client';

import { useState } from 'react';
import { classes } from './classes';
import styles from './HeatFigure.module.css';

type HeatFigureProps = Readonly<{
  text: string;
  /** display is for the big figures in the heading face. */
  face?: 'text' | 'display';
}>;

/** A figure that glows for a moment when it changes. */
export function HeatFigure({ text, face = 'text' }: HeatFigureProps) {
  const [seen, setSeen] = useState(text);
  const [changes, setChanges] = useState(0);
  if (text !== seen) {
    setSeen(text);
    setChanges(changes + 1);
  }
  // Two names for one glow: a class that stays would not start it again.
  const glow = changes === 0 ? undefined : changes % 2 ? styles.glow : styles.glowAgain;
  return <span className={classes(styles.figure, styles[face], glow)}>{text}</span>;
}
