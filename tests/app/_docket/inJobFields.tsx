import type { ReactNode } from 'react';
import { JobFieldsContext } from '@/app/_docket/common/jobFields';
import { useNewJobFields } from '@/app/_docket/screen/useNewJobFields';
import { useWorkspace } from '@/app/_documents/useWorkspace';
import type { JobInput } from '@/shared/schemas/request';

/** A job on the desk, for a part of the docket that is shown alone. */
export function InJobFields({ input, children }: Readonly<{ input: JobInput; children: ReactNode }>) {
  const fields = useNewJobFields('club-order', input, useWorkspace(), []);
  return <JobFieldsContext value={fields}>{children}</JobFieldsContext>;
}
