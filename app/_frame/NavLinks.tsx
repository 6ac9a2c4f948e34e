'use client';

import Link from 'next/link';
import { useSelectedLayoutSegments } from 'next/navigation';
import { useState } from 'react';
import styles from './NavLinks.module.css';

const places = [
  { href: '/jobs', name: 'Jobs' },
  { href: '/orders', name: 'Orders' },
  { href: '/making', name: 'Making' },
  { href: '/stall', name: 'Stall' },
] as const;

/** Where one is less often: on a phone behind one word, so that the links take one line of the screen. */
const rarePlaces = [
  { href: '/blanks', name: 'Blanks' },
  { href: '/price-lists', name: 'Price lists' },
  { href: '/year', name: 'Year' },
  { href: '/workshop', name: 'Workshop' },
] as const;

type Place = (typeof places)[number] | (typeof rarePlaces)[number];

/** The rooms of the app; the one we stand in is marked for the eye and for a screen reader. */
export function NavLinks() {
  // Not the address: the server sends one page for every job, and it must read the same there as here.
  const path = `/${useSelectedLayoutSegments().join('/')}`;
  // By where it was opened: whoever goes on finds it folded.
  const [openedAt, setOpenedAt] = useState<string | null>(null);
  const isOpen = openedAt === path;
  const isRare = rarePlaces.some(({ href }) => currentOf(path, href) !== undefined);
  return (
    <nav aria-label="Main">
      <ul className={styles.links}>
        {places.map((place) => (
          <NavLink key={place.href} {...{ place, path }} />
        ))}
        <li className={styles.more}>
          <button
            type="button"
            className={styles.link}
            aria-expanded={isOpen}
            data-marked={isRare || undefined}
            onClick={() => setOpenedAt(isOpen ? null : path)}
          >
            More
          </button>
        </li>
        {rarePlaces.map((place) => (
          <NavLink key={place.href} {...{ place, path }} className={isOpen ? undefined : styles.folded} />
        ))}
      </ul>
    </nav>
  );
}

// Helpers

interface NavLinkProps {
  readonly place: Place;
  readonly path: string;
  readonly className?: string | undefined;
}

function NavLink({ place: { href, name }, path, className }: NavLinkProps) {
  return (
    <li className={className}>
      <Link className={styles.link} href={href} aria-current={currentOf(path, href)}>
        {name}
      </Link>
    </li>
  );
}

/** What stands in a room whose address does not say so: the front door is the job last looked at. */
const inside: Readonly<Partial<Record<Place['href'], RegExp>>> = {
  '/jobs': /^\/$/,
  '/orders': /^\/customers(\/|$)/,
};

function currentOf(path: string, href: Place['href']): 'page' | 'true' | undefined {
  if (path === href) return 'page';
  const isInside = path.startsWith(`${href}/`) || inside[href]?.test(path) === true;
  return isInside ? 'true' : undefined;
}
