import type { Metadata } from 'next';
import { BlanksScreen } from '@/app/_blanks/BlanksScreen';

export const metadata: Metadata = { title: 'Blanks' };

export default function Page() {
  return <BlanksScreen />;
}
