import type { Metadata } from 'next';
import { StallDayOfAddress } from '@/app/_stallDay/StallDayScreen';

export const metadata: Metadata = { title: 'Stall day' };

/** Every stall day: proxy.ts leads `/stall/ANY` here, and the screen reads which from the address. */
export default function Page() {
  return <StallDayOfAddress />;
}
