import type { Metadata } from 'next';
import { JobScreen } from '@/app/_jobs/JobScreen';

export const metadata: Metadata = { title: 'Job' };

export default async function Page({ params }: Readonly<{ params: Promise<{ jobId: string }> }>) {
  const { jobId } = await params;
  return <JobScreen jobId={jobId} />;
}
