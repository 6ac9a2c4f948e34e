'use client';

import { type ReactNode, useMemo } from 'react';
import { Button } from '@/app/_controls/Button';
import { BringBack, BroughtBack } from '@/app/_copies/BringBack';
import { useBringingBack } from '@/app/_copies/useBringingBack';
import { FormerThingsContext, useFormerThings } from '@/app/_documents/formerThings';
import { useWorkspace, type Workspace } from '@/app/_documents/useWorkspace';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { storeFailedWords } from '@/app/_words/store/storeFailedWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { Workshop } from '@/shared/schemas/workshop';
import { EmptyWorkshop } from './EmptyWorkshop';
import { isNothingHere } from './isNothingHere';
import { LostWorkshop } from './LostWorkshop';
import { WipedWorkshop } from './WipedWorkshop';
import styles from './WithWorkspace.module.css';

/** The maker's documents once they are open, with a workshop among them. */
export type ReadyWorkspace = Workspace & { readonly workshop: Workshop };

type WithWorkspaceProps = Readonly<{
  children: (workspace: ReadyWorkspace) => ReactNode;
  /** What the page was sent with: it stands while the documents are opened. */
  opening?: ReactNode;
}>;

/** Shows a screen once the documents are open; until then says calmly how far they are. */
export function WithWorkspace({ children, opening = null }: WithWorkspaceProps) {
  const workspace = useWorkspace();
  const { workshop } = workspace;
  const bringing = useBringingBack(workspace);
  const former = useFormerThings(workspace);
  const locale = usableLocale(workshop?.locale ?? 'en');
  const measures = useMemo(() => measuresOf(workshop), [workshop]);
  switch (workspace.status) {
    case 'opening':
      if (workspace.waitingFor === 'otherTab') {
        return (
          <div className={styles.failed} role="status">
            <h1>Another tab holds an older version of this page</h1>
            <p>Close it, and your workshop opens here by itself.</p>
          </div>
        );
      }
      return (
        opening ?? (
          <p className={styles.opening} role="status">
            Opening your workshop…
          </p>
        )
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
      return (
        <WipedWorkshop since={workspace.since} onBeginAgain={workspace.beginAgain}>
          <BringBack arriving={bringing} />
        </WipedWorkshop>
      );
    case 'ready':
      return (
        <NumberLocale value={locale}>
          <MeasuresContext value={measures}>
            <FormerThingsContext value={former}>
              {isNothingHere(workspace) ? (
                <EmptyWorkshop workspace={workspace} bringing={bringing} />
              ) : (
                <>
                  <BroughtBack arriving={bringing} />
                  {workshop === null ? (
                    <LostWorkshop workspace={workspace} />
                  ) : (
                    children({ ...workspace, workshop })
                  )}
                </>
              )}
            </FormerThingsContext>
          </MeasuresContext>
        </NumberLocale>
      );
    default:
      return workspace satisfies never;
  }
}
