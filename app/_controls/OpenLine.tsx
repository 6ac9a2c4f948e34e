import Link from 'next/link';
import type { ReactNode } from 'react';
import { classes } from './classes';
import styles from './OpenLine.module.css';

type OpenLineProps = Readonly<{
  /** Where its columns and its padding stand. */
  className: string | undefined;
  children: ReactNode;
}>;

/** One line of a list, of which the whole opens what its `OpenName` leads to. */
export const OpenLine = ({ className, children }: OpenLineProps) => (
  <li className={classes(styles.line, className)}>{children}</li>
);

type OpenNameProps = Readonly<{
  /** A part of its own above the list has the second. */
  level?: 2 | 3;
  href: string;
  children: ReactNode;
}>;

export function OpenName({ level = 2, href, children }: OpenNameProps) {
  const Heading = `h${level}` as const;
  return (
    <Heading className={styles.name}>
      <Link href={href}>{children}</Link>
    </Heading>
  );
}
