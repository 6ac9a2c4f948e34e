'use client';

import { type ReactNode, useState } from 'react';
import { lazy } from '@/app/_network/lazy';
import { useLazy } from '@/app/_network/useLazy';
import { PageNotFetched } from './PageNotFetched';
import { Shell } from './Shell';

/** What it says is of documents, which no page has when it is sent. */
const lazyFrameStatus = lazy(() => import('./FrameStatus').then(({ FrameStatus }) => FrameStatus));
// Asked for beside the screen; a failure is dealt with where it is shown.
if (typeof window !== 'undefined') lazyFrameStatus.fetch().catch(() => undefined);

/** Header, what is kept, undo and redo: around every screen, and the same one while screens change. */
export function AppFrame({ children }: Readonly<{ children: ReactNode }>) {
  const [place, setPlace] = useState<HTMLElement | null>(null);
  // Where it cannot be fetched, neither can the screen, which says so.
  const fetched = useLazy(lazyFrameStatus, place !== null);
  const FrameStatus = place !== null && fetched.kind === 'here' ? fetched.value : null;
  return (
    <Shell status={setPlace}>
      <PageNotFetched />
      {FrameStatus !== null && place !== null && <FrameStatus place={place} />}
      {children}
    </Shell>
  );
}
