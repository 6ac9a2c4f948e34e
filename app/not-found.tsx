import type { Metadata } from 'next';
import Link from 'next/link';

export const metadata: Metadata = { title: 'Page not found' };

/** In place of the framework's own page, whose inline styles the content policy refuses. */
export default function NotFound() {
  return (
    <main>
      <h1>There is no page at this address</h1>
      <p>
        It may have been mistyped, or have led to a job that has been deleted.{' '}
        <Link href="/">To the jobs</Link>
      </p>
    </main>
  );
}
