import type { Metadata } from 'next';
import { OrderOfAddress } from '@/app/_order/OrderScreen';

export const metadata: Metadata = { title: 'Order' };

/** Every order: proxy.ts leads `/orders/ANY` here, and the screen reads which from the address. */
export default function Page() {
  return <OrderOfAddress />;
}
