import type { Metadata } from 'next';
import { WorkshopScreen } from '@/app/_workshop/WorkshopScreen';

export const metadata: Metadata = { title: 'Workshop' };

export default function Page() {
  return <WorkshopScreen />;
}
