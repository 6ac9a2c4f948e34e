import type { Metadata } from 'next';
import { BuyingListsScreen } from '@/app/_supply/buying/BuyingListsScreen';

export const metadata: Metadata = { title: 'Buying lists' };

export default function Page() {
  return <BuyingListsScreen />;
}
