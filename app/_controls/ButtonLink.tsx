import Link from 'next/link';
import type { ReactNode } from 'react';
import styles from './Button.module.css';
import { classes } from './classes';

type ButtonLinkProps = Readonly<{
  href: string;
  kind?: 'strong' | 'plain';
  /** What is spoken where the words on it alone do not say where it leads; begins with them. */
  spoken?: string | undefined;
  children: ReactNode;
}>;

/** A link that stands among buttons and looks like one, because what is done there is the next thing to do. */
export const ButtonLink = ({ href, kind = 'plain', spoken, children }: ButtonLinkProps) => (
  <Link className={classes(styles.button, styles.link, styles[kind])} href={href} aria-label={spoken}>
    {children}
  </Link>
);
