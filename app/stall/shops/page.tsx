import type { Metadata } from 'next';
import { ShopsScreen } from '@/app/_shops/ShopsScreen';

export const metadata: Metadata = { title: 'Shops' };

export default function Page() {
  return <ShopsScreen />;
}
