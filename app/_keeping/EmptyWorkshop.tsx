'use client';

import { useEffect, useRef } from 'react';
import { BringBack } from '@/app/_copies/BringBack';
import type { Arriving } from '@/app/_copies/useArriving';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from './laterParts';
import styles from './WipedWorkshop.module.css';

type EmptyWorkshopProps = Readonly<{ workspace: Workspace; bringing: Arriving }>;

/** In place of every screen where nothing is kept any more, as after a copy was brought back and taken away again. */
export function EmptyWorkshop({ workspace, bringing }: EmptyWorkshopProps) {
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
      <LaterPart
        part={laterParts.freshWorkshop}
        what="The rest of this page"
        props={{ workspace, lost: undefined, isAllGone: true }}
      />
    </>
  );
}
