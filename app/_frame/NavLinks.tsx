'use client';

import Link from 'next/link';
import { useSelectedLayoutSegments } from 'next/navigation';
import styles from './NavLinks.module.css';

const places = [
  { href: '/jobs', name: 'Jobs' },
  { href: '/orders', name: 'Orders' },
  { href: '/making', name: 'Making' },
  { href: '/stall', name: 'Stall' },
  { href: '/blanks', name: 'Blanks' },
  { href: '/price-lists', name: 'Price lists' },
  { href: '/year', name: 'Year' },
  { href: '/workshop', name: 'Workshop' },
] as const;

/** The rooms of the app; the one we stand in is marked for the eye and for a screen reader. */
export function NavLinks() {
  // Not the address: the server sends one page for every job, and it must read the same there as here.
  const path = `/${useSelectedLayoutSegments().join('/')}`;
  return (
    <nav aria-label="Main">
      <ul className={styles.links}>
        {places.map(({ href, name }) => (
          <li key={href}>
            <Link className={styles.link} href={href} aria-current={currentOf(path, href)}>
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}

// Helpers

/** What stands in a room whose address does not say so: the front door is the job last looked at. */
const inside: Readonly<Partial<Record<(typeof places)[number]['href'], RegExp>>> = {
  '/jobs': /^\/$/,
  '/orders': /^\/customers(\/|$)/,
};

function currentOf(path: string, href: (typeof places)[number]['href']): 'page' | 'true' | undefined {
  if (path === href) return 'page';
  const isInside = path.startsWith(`${href}/`) || inside[href]?.test(path) === true;
  return isInside ? 'true' : undefined;
}
