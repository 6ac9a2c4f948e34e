'use client';

import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import type { Arriving } from './useArriving';

/** Its words are many and wait for a file, so they come behind what is seen first. */
const lazyTold = lazy(() => import('./ArrivedTold').then(({ ArrivedTold }) => ArrivedTold));

type ArrivedProps = Readonly<{ arriving: Arriving; level: 2 | 3 }>;

/** What has become of a file that was chosen or dropped, wherever that was. */
export function Arrived({ arriving, level }: ArrivedProps) {
  const told = useLazy(lazyTold);
  if (told.kind === 'here') return <told.value arriving={arriving} level={level} />;
  // Before a file is chosen there is nothing that anybody could miss.
  if (told.kind === 'coming' || arriving.state.kind === 'idle') return null;
  return <PartMissing what="What becomes of the file" missing={told} />;
}
