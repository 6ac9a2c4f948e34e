import type { Metadata } from 'next';
import { ShopOfAddress } from '@/app/_shops/ShopScreen';

export const metadata: Metadata = { title: 'Shop' };

/** Every shop: proxy.ts leads `/stall/shops/ANY` here, and the screen reads which from the address. */
export default function Page() {
  return <ShopOfAddress />;
}
