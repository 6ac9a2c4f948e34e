'use client';

import { useEffect, useRef } from 'react';
import { BringBack } from '@/app/_copies/BringBack';
import type { Arriving } from '@/app/_copies/useArriving';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { lazyFreshWorkshop } from './lazyFreshWorkshop';
import styles from './WipedWorkshop.module.css';

type EmptyWorkshopProps = Readonly<{ workspace: Workspace; bringing: Arriving }>;

/** In place of every screen where nothing is kept any more, as after a copy was brought back and taken away again. */
export function EmptyWorkshop({ workspace, bringing }: EmptyWorkshopProps) {
  const fresh = useLazy(lazyFreshWorkshop);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    // What was pressed went with the screen that it was on.
    if (document.activeElement === document.body) heading.current?.focus();
  }, []);
  return (
    <>
      <div className={styles.wiped}>
        <h1 ref={heading} tabIndex={-1}>
          Nothing is kept here
        </h1>
        <p>There is no workshop, no job and no blank on this device. Bring a copy back, or begin again.</p>
        <BringBack arriving={bringing} />
      </div>
      {fresh.kind === 'missing' && <PartMissing what="The rest of this page" missing={fresh} />}
      {fresh.kind === 'here' && <fresh.value workspace={workspace} lost={undefined} isAllGone />}
    </>
  );
}
