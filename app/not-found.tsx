import type { Metadata } from 'next';
import Link from 'next/link';
import { PageHead } from '@/app/_controls/PageHead';

export const metadata: Metadata = { title: 'Page not found' };

/** In place of the framework's own page, whose inline styles the content policy refuses. */
export default function NotFound() {
  return (
    <>
      <PageHead
        title="There is no page at this address"
        line="It may have been mistyped, or have led to a job that has been removed."
      />
      <p>
        <Link href="/jobs">To the jobs</Link>
      </p>
    </>
  );
}
