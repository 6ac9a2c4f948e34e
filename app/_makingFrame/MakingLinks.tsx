import Link from 'next/link';
import styles from './MakingLinks.module.css';

const places = [
  { href: '/making', name: 'Runs' },
  { href: '/making/buying', name: 'Buying' },
  { href: '/making/suppliers', name: 'Suppliers' },
  { href: '/making/stock', name: 'Stock' },
  { href: '/making/log', name: 'Press log' },
] as const;

type MakingLinksProps = Readonly<{
  /** Where we stand. */
  here: (typeof places)[number]['href'];
  /** Whether that is the place itself, or something within it. */
  isInside?: boolean;
}>;

/** Leads from one place of the making to the others; the one we stand in is marked. Stands above a screen's head. */
export const MakingLinks = ({ here, isInside = false }: MakingLinksProps) => (
  <nav aria-label="Making" className={styles.making}>
    <ul className={styles.links}>
      {places.map(({ href, name }) => (
        <li key={href}>
          <Link
            className={styles.link}
            href={href}
            aria-current={href === here ? (isInside ? 'true' : 'page') : undefined}
          >
            {name}
          </Link>
        </li>
      ))}
    </ul>
  </nav>
);
