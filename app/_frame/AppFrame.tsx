'use client';

import { type ReactNode, useMemo } from 'react';
import { HeaderCopy } from '@/app/_copies/HeaderCopy';
import { useCopyStanding } from '@/app/_copies/useCopyStanding';
import { useAskToKeep } from '@/app/_copies/useStoragePromise';
import { useWorkspace } from '@/app/_documents/useWorkspace';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { NewerVersion } from '@/app/_offline/NewerVersion';
import { NoNetwork } from '@/app/_offline/NoNetwork';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { MovedNote } from './MovedNote';
import { OverwrittenNote } from './OverwrittenNote';
import { PageNotFetched } from './PageNotFetched';
import { SaveStatus } from './SaveStatus';
import { Shell } from './Shell';
import { UndoRedo } from './UndoRedo';
import { useMoves } from './useMoves';
import { useUndoKeys } from './useUndoKeys';

/** Header, what is kept, undo and redo: around every screen, and the same one while screens change. */
export function AppFrame({ children }: Readonly<{ children: ReactNode }>) {
  const workspace = useWorkspace();
  const { status, kept, undo, redo, undoLabel, redoLabel, retry, workshop, ...rest } = workspace;
  const { moved, onUndo, onRedo, onSeen } = useMoves({ undo, redo, undoLabel, redoLabel });
  useUndoKeys(onUndo, onRedo);
  const locale = usableLocale(workshop?.locale ?? 'en');
  const measures = useMemo(() => measuresOf(workshop), [workshop]);
  const standing = useCopyStanding(workspace);
  useAskToKeep(status === 'ready' && kept.state === 'kept' && standing.state !== 'nothingOwn');
  const isTold = standing.state !== 'nothingOwn' && standing.isDue && kept.state !== 'notKept';
  return (
    <NumberLocale value={locale}>
      <MeasuresContext value={measures}>
        <Shell
          status={
            status === 'ready' && (
              <>
                <NoNetwork />
                <UndoRedo
                  undo={undoLabel}
                  redo={redoLabel}
                  onUndo={() => void onUndo()}
                  onRedo={() => void onRedo()}
                />
                {!isTold && (
                  <SaveStatus
                    kept={
                      kept.state === 'kept'
                        ? { kind: 'kept', at: clock(kept.at, locale) }
                        : kept.state === 'keeping'
                          ? { kind: 'keeping' }
                          : { kind: 'notKept', why: saveFailureWords[kept.why] }
                    }
                    onRetry={() => void retry()}
                  />
                )}
                <HeaderCopy workspace={workspace} standing={standing} isKept={kept.state === 'kept'} />
              </>
            )
          }
        >
          <NewerVersion isReady={status === 'ready'} />
          <PageNotFetched />
          <OverwrittenNote
            fields={rest.overwritten}
            documents={rest.documents}
            onSeen={rest.acknowledgeOverwritten}
          />
          <MovedNote move={moved} workspace={rest} onSeen={onSeen} />
          {children}
        </Shell>
      </MeasuresContext>
    </NumberLocale>
  );
}

const clock = (at: number, locale: string): string =>
  new Intl.DateTimeFormat(locale, { hour: '2-digit', minute: '2-digit' }).format(at);
