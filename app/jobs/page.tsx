import type { Metadata } from 'next';
import { JobsScreen } from '@/app/_jobs/JobsScreen';

export const metadata: Metadata = { title: 'Jobs' };

export default function Page() {
  return <JobsScreen />;
}
