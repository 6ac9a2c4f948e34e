import type { Metadata } from 'next';
import { JobSheetScreen } from '@/app/_jobs/JobSheetScreen';

export const metadata: Metadata = { title: 'Job sheet' };

export default async function Page({ params }: Readonly<{ params: Promise<{ jobId: string }> }>) {
  const { jobId } = await params;
  return <JobSheetScreen jobId={jobId} />;
}
