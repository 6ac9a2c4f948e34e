import type { Metadata } from 'next';
import { JobSheetScreen } from '@/app/_jobs/JobSheetScreen';

export const metadata: Metadata = { title: 'Job sheet' };

/** The sheet of every job: proxy.ts leads `/jobs/ANY/sheet` here, and the screen reads which from the address. */
export default function Page() {
  return <JobSheetScreen />;
}
