import type { Metadata } from 'next';
import { StartScreen } from '@/app/_start/StartScreen';

export const metadata: Metadata = { title: 'Start your own workshop' };

export default function Page() {
  return <StartScreen />;
}
