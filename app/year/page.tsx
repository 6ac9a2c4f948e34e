import type { Metadata } from 'next';
import { YearScreen } from '@/app/_year/YearScreen';

export const metadata: Metadata = { title: 'Year' };

export default function Page() {
  return <YearScreen />;
}
