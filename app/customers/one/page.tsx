import type { Metadata } from 'next';
import { CustomerOfAddress } from '@/app/_customers/CustomerScreen';

export const metadata: Metadata = { title: 'Customer' };

/** Every customer: proxy.ts leads `/customers/ANY` here, and the screen reads which from the address. */
export default function Page() {
  return <CustomerOfAddress />;
}
