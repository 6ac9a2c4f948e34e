import type { Metadata } from 'next';
import { PressOfAddress } from '@/app/_press/PressScreen';

export const metadata: Metadata = { title: 'At the press' };

/** The press of every run: proxy.ts leads `/making/ANY/press` here, and the screen reads which from the address. */
export default function Page() {
  return <PressOfAddress />;
}
