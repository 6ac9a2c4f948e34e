import type { Metadata } from 'next';
import { BlanksRoom } from '../_blanks/BlanksRoom';

export const metadata: Metadata = { title: 'Blanks' };

export default function Page() {
  return <BlanksRoom />;
}
