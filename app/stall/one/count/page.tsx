import type { Metadata } from 'next';
import { CountOfAddress } from '@/app/_count/CountScreen';

export const metadata: Metadata = { title: 'Sales count' };

/** The sales count of every stall day: proxy.ts leads `/stall/ANY/count` here, and the screen reads which from the address. */
export default function Page() {
  return <CountOfAddress />;
}
