import Link from 'next/link';
import type { ReactNode } from 'react';

type JobSheetLinkProps = Readonly<{ jobId: string; className?: string | undefined; children?: ReactNode }>;

/** Leads to the job on paper: the page for the bench, and the owner's. */
export const JobSheetLink = ({ jobId, className, children = 'Job sheet' }: JobSheetLinkProps) => (
  <Link className={className} href={`/jobs/${jobId}/sheet`}>
    {children}
  </Link>
);
