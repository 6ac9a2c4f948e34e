import type { Metadata } from 'next';
import { RunsScreen } from '@/app/_runs/RunsScreen';

export const metadata: Metadata = { title: 'Making' };

export default function Page() {
  return <RunsScreen />;
}
