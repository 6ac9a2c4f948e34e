import type { Metadata } from 'next';
import { SuppliersScreen } from '@/app/_supply/SuppliersScreen';

export const metadata: Metadata = { title: 'Suppliers' };

export default function Page() {
  return <SuppliersScreen />;
}
