'use client';

import type { ReactNode, Ref } from 'react';
import styles from './Button.module.css';
import { classes } from './classes';

type ButtonProps = Readonly<{
  children: ReactNode;
  onPress?: () => void;
  /** strong: the one thing to do here; plain: an offer; quiet: beside the point. */
  kind?: 'strong' | 'plain' | 'quiet';
  type?: 'button' | 'submit';
  /** Why it can't be pressed now; the button stays reachable and says so. */
  blockedBy?: string | undefined;
  describedBy?: string | undefined;
  /** What is spoken where the words on it alone do not say what it does; begins with them. */
  spoken?: string | undefined;
  /** Whether what it opens is open; leave out where it opens nothing. */
  expanded?: boolean | undefined;
  ref?: Ref<HTMLButtonElement> | undefined;
}>;

/** A button in one of three weights. */
export function Button({
  children,
  onPress,
  kind = 'plain',
  type = 'button',
  blockedBy,
  describedBy,
  spoken,
  expanded,
  ref,
}: ButtonProps) {
  return (
    <button
      ref={ref}
      className={classes(styles.button, styles[kind])}
      type={type}
      aria-disabled={blockedBy !== undefined || undefined}
      aria-describedby={describedBy}
      aria-label={spoken}
      aria-expanded={expanded}
      title={blockedBy}
      onClick={(event) => (blockedBy === undefined ? onPress?.() : event.preventDefault())}
    >
      {children}
    </button>
  );
}
