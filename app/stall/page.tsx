import type { Metadata } from 'next';
import { StallScreen } from '@/app/_stall/StallScreen';

export const metadata: Metadata = { title: 'Stall days' };

export default function Page() {
  return <StallScreen />;
}
