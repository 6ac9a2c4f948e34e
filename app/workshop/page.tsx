import type { Metadata } from 'next';
import { WorkshopRoom } from '../_workshop/WorkshopRoom';

export const metadata: Metadata = { title: 'Workshop' };

export default function Page() {
  return <WorkshopRoom />;
}
