import type { Metadata } from 'next';
import { JobOfAddress } from '@/app/_jobs/JobScreen';

export const metadata: Metadata = { title: 'Job' };

/** Every job: proxy.ts leads `/jobs/ANY` here, and the screen reads which from the address. */
export default function Page() {
  return <JobOfAddress />;
}
