import type { Metadata } from 'next';
import { StartRoom } from '../_start/StartRoom';

export const metadata: Metadata = { title: 'Start your own workshop' };

export default function Page() {
  return <StartRoom />;
}
