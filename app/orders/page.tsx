import type { Metadata } from 'next';
import { OrdersScreen } from '@/app/_orders/OrdersScreen';

export const metadata: Metadata = { title: 'Orders' };

export default function Page() {
  return <OrdersScreen />;
}
