import type { Metadata } from 'next';
import { StartRoom } from '@/app/_start/StartScreen';

export const metadata: Metadata = { title: 'Start your own workshop' };

export default function Page() {
  return <StartRoom />;
}
