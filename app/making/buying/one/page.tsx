import type { Metadata } from 'next';
import { BuyingListOfAddress } from '@/app/_supply/buying/BuyingListScreen';

export const metadata: Metadata = { title: 'Buying list' };

/** Every buying list: proxy.ts leads `/making/buying/ANY` here, and the screen reads which from the address. */
export default function Page() {
  return <BuyingListOfAddress />;
}
