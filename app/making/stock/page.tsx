import type { Metadata } from 'next';
import { StockroomScreen } from '@/app/_stockroom/StockroomScreen';

export const metadata: Metadata = { title: 'Stock' };

export default function Page() {
  return <StockroomScreen />;
}
