import type { Metadata } from 'next';
import { CustomersScreen } from '@/app/_customers/CustomersScreen';

export const metadata: Metadata = { title: 'Customers' };

export default function Page() {
  return <CustomersScreen />;
}
