import type { ReactNode } from 'react';
import { JobDeskContext } from '@/app/_docket/common/jobForm';
import { useDesk } from '@/app/_docket/screen/useNewJobForm';
import { useMaker } from '@/app/_documents/useWorkspace';
import type { JobInput } from '@/shared/schemas/request';

/** A job on the desk, for a part of the docket that is shown alone. */
export function OnDesk({ input, children }: Readonly<{ input: JobInput; children: ReactNode }>) {
  const desk = useDesk('club-order', input, useMaker(), []);
  return <JobDeskContext value={desk}>{children}</JobDeskContext>;
}
