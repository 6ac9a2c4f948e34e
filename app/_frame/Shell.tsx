import Link from 'next/link';
import type { ReactNode, Ref } from 'react';
import { NavLinks } from './NavLinks';
import styles from './Shell.module.css';
import { Wordmark } from './Wordmark';

type ShellProps = Readonly<{
  /** The end of the header, for what is kept, undo and redo. */
  status?: Ref<HTMLDivElement>;
  children: ReactNode;
}>;

/** The frame of every screen: skip link, header, and the ground the docket lies on. */
export function Shell({ status, children }: ShellProps) {
  return (
    <>
      <a className={styles.skip} href="#content">
        Skip to the content
      </a>
      <header className={styles.header}>
        <Link className={styles.home} href="/">
          <Wordmark />
        </Link>
        <NavLinks />
        <div className={styles.status} ref={status} />
      </header>
      <main className={styles.main} id="content" tabIndex={-1}>
        {children}
      </main>
    </>
  );
}
