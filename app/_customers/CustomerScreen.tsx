'use client';

import { PageHead } from '@/app/_controls/PageHead';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';

/** The customer that the address names. */
export const CustomerOfAddress = () => <CustomerScreen customerId={useIdInAddress('/customers/')} />;

/** One customer: who they are, where bills and goods go, what they ordered. */
function CustomerScreen({ customerId }: Readonly<{ customerId: string }>) {
  return <WithWorkspace>{() => <PageHead title={customerId} />}</WithWorkspace>;
}
