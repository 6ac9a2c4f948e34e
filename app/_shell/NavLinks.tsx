'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import styles from './NavLinks.module.css';

const places = [
  { href: '/', name: 'Jobs', room: '/jobs' },
  { href: '/blanks', name: 'Blanks', room: '/blanks' },
  { href: '/workshop', name: 'Workshop', room: '/workshop' },
] as const;

/** The rooms of the app; the one we stand in is marked for the eye and for a screen reader. */
export function NavLinks() {
  const path = usePathname();
  return (
    <nav aria-label="Main">
      <ul className={styles.links}>
        {places.map(({ href, name, room }) => {
          const current = path === href ? 'page' : path.startsWith(`${room}/`) ? 'true' : undefined;
          return (
            <li key={href}>
              <Link className={styles.link} href={href} aria-current={current}>
                {name}
              </Link>
            </li>
          );
        })}
      </ul>
    </nav>
  );
}
