import type { Metadata } from 'next';
import { EveningOfAddress } from '@/app/_evening/EveningScreen';

export const metadata: Metadata = { title: 'The evening' };

/** The evening of every stall day: proxy.ts leads `/stall/ANY/evening` here, and the screen reads which from the address. */
export default function Page() {
  return <EveningOfAddress />;
}
