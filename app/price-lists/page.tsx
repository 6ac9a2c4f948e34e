import type { Metadata } from 'next';
import { PriceListsScreen } from '@/app/_priceLists/PriceListsScreen';

export const metadata: Metadata = { title: 'Price lists' };

export default function Page() {
  return <PriceListsScreen />;
}
