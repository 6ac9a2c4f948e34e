import type { Metadata } from 'next';
import { AfterRunOfAddress } from '@/app/_afterRun/AfterRunScreen';

export const metadata: Metadata = { title: 'After the run' };

/** What every run came to: proxy.ts leads `/making/ANY/after` here, and the screen reads which from the address. */
export default function Page() {
  return <AfterRunOfAddress />;
}
