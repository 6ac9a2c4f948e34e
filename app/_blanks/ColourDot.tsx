'use client';

import type { Blank } from '@/shared/schemas/blank';
import styles from './Blanks.module.css';

/** A colour by its L*a*b*; beside its name, never instead of it. */
export function ColourDot({ colour: { L, a, b } }: Readonly<{ colour: Blank['colour'] }>) {
  return <span className={styles.dot} style={{ background: `lab(${L}% ${a} ${b})` }} aria-hidden="true" />;
}
