import type { Metadata } from 'next';
import { PressLogScreen } from '@/app/_pressLog/PressLogScreen';

export const metadata: Metadata = { title: 'Press log' };

export default function Page() {
  return <PressLogScreen />;
}
