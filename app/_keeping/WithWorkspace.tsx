'use client';

import type { ReactNode } from 'react';
import { Button } from '@/app/_controls/Button';
import { FormerThingsContext, useFormerThings } from '@/app/_documents/formerThings';
import { useWorkspace, type Workspace } from '@/app/_documents/useWorkspace';
import { storeFailedWords } from '@/app/_words/store/storeFailedWords';
import type { Workshop } from '@/shared/schemas/workshop';
import { LostWorkshop } from './LostWorkshop';
import { WipedWorkshop } from './WipedWorkshop';
import styles from './WithWorkspace.module.css';

/** The maker's documents once they are open, with a workshop among them. */
export type ReadyWorkspace = Workspace & { readonly workshop: Workshop };

/** Shows a screen once the documents are open; until then says calmly how far they are. */
export function WithWorkspace({
  children,
}: Readonly<{ children: (workspace: ReadyWorkspace) => ReactNode }>) {
  const workspace = useWorkspace();
  const { workshop } = workspace;
  const former = useFormerThings(workspace);
  switch (workspace.status) {
    case 'opening':
      return (
        <p className={styles.opening} role="status">
          {workspace.waitingFor === 'otherTab'
            ? 'Another tab holds an older version of this page. Close it, and your workshop opens here.'
            : 'Opening your workshop…'}
        </p>
      );
    case 'failed':
      return (
        <div className={styles.failed} role="alert">
          <h1>Your workshop cannot be opened</h1>
          <p>{storeFailedWords[workspace.why]}</p>
          <Button kind="strong" onPress={() => void workspace.retry()}>
            Try again
          </Button>
        </div>
      );
    case 'wiped':
      return <WipedWorkshop onBeginAgain={workspace.beginAgain}>{null}</WipedWorkshop>;
    case 'ready':
      return (
        <FormerThingsContext value={former}>
          {workshop === null ? <LostWorkshop workspace={workspace} /> : children({ ...workspace, workshop })}
        </FormerThingsContext>
      );
    default:
      return workspace satisfies never;
  }
}
