'use client';

import type { ReactNode } from 'react';
import { classes } from '@/app/_controls/classes';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { useFileDrop } from '@/app/_files/useFileDrop';
import { Arrived } from './Arrived';
import { BringIn } from './BringIn';
import styles from './DropToBringIn.module.css';
import { useArriving } from './useArriving';
import { useCopyStore } from './useCopyStore';
import { useMakingCopy } from './useMakingCopy';

type DropToBringInProps = Readonly<{ workspace: Workspace; children: ReactNode }>;

/** A list onto which copies and carried files can be dropped; what would come of one stands beside it. */
export function DropToBringIn({ workspace, children }: DropToBringInProps) {
  const store = useCopyStore(workspace);
  const { makeFirst } = useMakingCopy(store);
  const arriving = useArriving({ ...store, saveFirst: makeFirst });
  const { isOver, zone } = useFileDrop(arriving.look);
  const { kind } = arriving.state;
  const isBeside = kind === 'looked' || kind === 'taking';
  return (
    <div className={classes(styles.room, isBeside && styles.beside, isOver && styles.over)} {...zone}>
      <div className={styles.list}>{children}</div>
      <div className={styles.arrived}>
        <Arrived arriving={arriving} level={2} />
      </div>
      <div className={styles.foot}>
        <BringIn arriving={arriving} button="Bring a file in" />
      </div>
    </div>
  );
}
