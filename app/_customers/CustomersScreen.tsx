'use client';

import { PageHead } from '@/app/_controls/PageHead';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';

/** Everyone who orders. */
export function CustomersScreen() {
  return <WithWorkspace>{() => <PageHead title="Customers" />}</WithWorkspace>;
}
