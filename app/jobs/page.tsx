import type { Metadata } from 'next';
import { JobsRoom } from '../_jobs/JobsRoom';

export const metadata: Metadata = { title: 'Jobs' };

export default function Page() {
  return <JobsRoom />;
}
