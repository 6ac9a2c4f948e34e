'use client';

import { createPortal } from 'react-dom';
import { wallAt } from '@/app/_clock/wallAt';
import { HeaderCopy } from '@/app/_copies/HeaderCopy';
import { useCopyStanding } from '@/app/_copies/useCopyStanding';
import { useAskToKeep } from '@/app/_copies/useStoragePromise';
import { useWorkspace } from '@/app/_documents/useWorkspace';
import { NewerVersion } from '@/app/_offline/NewerVersion';
import { NoNetwork } from '@/app/_offline/NoNetwork';
import { clockWords } from '@/app/_words/clockWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { LostStoreNote } from './LostStoreNote';
import { MovedNote } from './MovedNote';
import { OverwrittenNote } from './OverwrittenNote';
import { SaveStatus } from './SaveStatus';
import { UndoRedo } from './UndoRedo';
import { useMoves } from './useMoves';
import { useUndoKeys } from './useUndoKeys';

type FrameStatusProps = Readonly<{
  /** The end of the header. */
  place: HTMLElement;
}>;

/** What is kept, undo and redo at the end of the header, and the notes of what they did. */
export function FrameStatus({ place }: FrameStatusProps) {
  const workspace = useWorkspace();
  const { status, kept, undo, redo, undoLabel, redoLabel, retry, workshop, ...rest } = workspace;
  const { moved, onUndo, onRedo, onSeen } = useMoves({ undo, redo, undoLabel, redoLabel });
  useUndoKeys(onUndo, onRedo);
  const locale = workshop?.locale ?? 'en';
  const standing = useCopyStanding(workspace);
  useAskToKeep(status === 'ready' && kept.state === 'kept' && standing.state !== 'nothingOwn');
  const isTold = standing.state !== 'nothingOwn' && standing.isDue && kept.state !== 'notKept';
  return (
    <>
      {status === 'ready' &&
        createPortal(
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
                    ? { kind: 'kept', at: clockWords(wallAt(kept.at).minute, locale) }
                    : kept.state === 'keeping'
                      ? { kind: 'keeping' }
                      : { kind: 'notKept', why: saveFailureWords[kept.why] }
                }
                leadsToCopies={standing.state !== 'nothingOwn'}
                onRetry={() => void retry()}
              />
            )}
            <HeaderCopy workspace={workspace} standing={standing} isKept={kept.state === 'kept'} />
          </>,
          place,
        )}
      <NewerVersion isReady={status === 'ready'} />
      <OverwrittenNote
        fields={rest.overwritten}
        documents={rest.documents}
        onSeen={rest.acknowledgeOverwritten}
      />
      <LostStoreNote lost={rest.lostStore} onSeen={rest.acknowledgeLostStore} />
      <MovedNote move={moved} workspace={rest} onSeen={onSeen} />
    </>
  );
}
