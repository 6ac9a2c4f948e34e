'use client';

import { createPortal } from 'react-dom';
import { useWorkspace } from '@/app/_documents/useWorkspace';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { usableLocale } from '@/app/_words/usableLocale';
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
  const { status, kept, undo, redo, undoLabel, redoLabel, retry, workshop, ...rest } = useWorkspace();
  const { moved, onUndo, onRedo, onSeen } = useMoves({ undo, redo, undoLabel, redoLabel });
  useUndoKeys(onUndo, onRedo);
  const locale = usableLocale(workshop?.locale ?? 'en');
  return (
    <>
      {status === 'ready' &&
        createPortal(
          <>
            <UndoRedo
              undo={undoLabel}
              redo={redoLabel}
              onUndo={() => void onUndo()}
              onRedo={() => void onRedo()}
            />
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
          </>,
          place,
        )}
      <OverwrittenNote
        fields={rest.overwritten}
        documents={rest.documents}
        onSeen={rest.acknowledgeOverwritten}
      />
      <MovedNote move={moved} documents={rest.documents} jobs={rest.jobs} onSeen={onSeen} />
    </>
  );
}

const clock = (at: number, locale: string): string =>
  new Intl.DateTimeFormat(locale, { hour: '2-digit', minute: '2-digit' }).format(at);
