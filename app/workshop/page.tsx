import type { Metadata } from 'next';
import { WorkshopRoom } from '@/app/_workshop/WorkshopScreen';

export const metadata: Metadata = { title: 'Workshop' };

export default function Page() {
  return <WorkshopRoom />;
}
