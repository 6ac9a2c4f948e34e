import type { Metadata } from 'next';
import { RunOfAddress } from '@/app/_runs/run/RunScreen';

export const metadata: Metadata = { title: 'Run' };

/** Every run: proxy.ts leads `/making/ANY` here, and the screen reads which from the address. */
export default function Page() {
  return <RunOfAddress />;
}
