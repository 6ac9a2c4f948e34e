import type { Metadata } from 'next';
import { PriceListOfAddress } from '@/app/_priceLists/PriceListScreen';

export const metadata: Metadata = { title: 'Price list' };

/** Every price list: proxy.ts leads `/price-lists/ANY` here, and the screen reads which from the address. */
export default function Page() {
  return <PriceListOfAddress />;
}
