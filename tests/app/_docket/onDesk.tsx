import type { ReactNode } from 'react';
import { JobDeskContext } from '@/app/_docket/jobDesk';
import { useDesk } from '@/app/_docket/useDesk';
import { useMaker } from '@/app/_documents/useMaker';
import type { JobInput } from '@/shared/schemas/request';

/** A job on the desk, for a part of the docket that is shown alone. */
export function OnDesk({ input, children }: Readonly<{ input: JobInput; children: ReactNode }>) {
  const desk = useDesk('club-order', input, useMaker(), []);
  return <JobDeskContext value={desk}>{children}</JobDeskContext>;
}
