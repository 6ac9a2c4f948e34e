'use client';

import { type ReactNode, useState } from 'react';
import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
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
  const fetched = useLazy(lazyFrameStatus, place !== null);
  const FrameStatus = place !== null && fetched.kind === 'here' ? fetched.value : null;
  return (
    <Shell status={setPlace}>
      <PageNotFetched />
      {FrameStatus !== null && place !== null && <FrameStatus place={place} />}
      {/* Without a network the screen has not come either, and says so; gone it may be alone. */}
      {fetched.kind === 'missing' && fetched.isGone && (
        <PartMissing
          what="Undo, redo and the word whether all is kept"
          meanwhile="What you type is kept all the same."
          missing={fetched}
        />
      )}
      {children}
    </Shell>
  );
}
