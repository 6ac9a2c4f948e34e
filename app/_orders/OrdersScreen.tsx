'use client';

import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { OrdersBoard } from './OrdersBoard';

/** All orders: what waits on whom. */
export function OrdersScreen() {
  return <WithWorkspace>{(workspace) => <OrdersBoard workspace={workspace} />}</WithWorkspace>;
}
