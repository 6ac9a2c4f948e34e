'use client';

import { PageHead } from '@/app/_controls/PageHead';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';

/** All orders: what waits on whom. */
export function OrdersScreen() {
  return <WithWorkspace>{() => <PageHead title="Orders" />}</WithWorkspace>;
}
