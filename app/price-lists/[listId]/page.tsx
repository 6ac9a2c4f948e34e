import type { Metadata } from 'next';
import { PriceListScreen } from '@/app/_priceLists/PriceListScreen';

export const metadata: Metadata = { title: 'Price list' };

export default async function Page({ params }: Readonly<{ params: Promise<{ listId: string }> }>) {
  const { listId } = await params;
  return <PriceListScreen listId={listId} />;
}
