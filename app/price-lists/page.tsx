import type { Metadata } from 'next';
import { PriceListsRoom } from '../_lists/PriceListsRoom';

export const metadata: Metadata = { title: 'Price lists' };

export default function Page() {
  return <PriceListsRoom />;
}
