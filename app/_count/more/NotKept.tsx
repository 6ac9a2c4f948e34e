'use client';

import { Button } from '@/app/_controls/Button';
import { Carry } from '@/app/_copies/Carry';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import styles from './Panel.module.css';

type NotKeptProps = Readonly<{ workspace: ReadyWorkspace; plan: StallPlan }>;

/** What to do with taps that are on the screen and not on the device. */
export function NotKept({ workspace, plan }: NotKeptProps) {
  return (
    <div className={styles.keys}>
      <Button kind="strong" onPress={() => void workspace.retry()}>
        Try again
      </Button>
      <Carry store={workspace} what={{ kind: 'stallDay', id: plan.stallDayId, name: plan.title }} />
    </div>
  );
}
