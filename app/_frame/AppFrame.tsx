'use client';

import { type ReactNode, useMemo } from 'react';
import { useWorkspace } from '@/app/_documents/useWorkspace';
import { MeasuresContext, measuresOf } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
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
  const { status, kept, undo, redo, undoLabel, redoLabel, retry, workshop, ...rest } = useWorkspace();
  const { moved, onUndo, onRedo, onSeen } = useMoves({ undo, redo, undoLabel, redoLabel });
  useUndoKeys(onUndo, onRedo);
  const locale = usableLocale(workshop?.locale ?? 'en');
  const measures = useMemo(() => measuresOf(workshop), [workshop]);
  return (
    <Shell
      status={
        status === 'ready' && (
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
          </>
        )
      }
    >
      <PageNotFetched />
      <OverwrittenNote
        fields={rest.overwritten}
        documents={rest.documents}
        onSeen={rest.acknowledgeOverwritten}
      />
      <MovedNote move={moved} workspace={rest} onSeen={onSeen} />
      <NumberLocale value={locale}>
        <MeasuresContext value={measures}>{children}</MeasuresContext>
      </NumberLocale>
    </Shell>
  );
}

const clock = (at: number, locale: string): string =>
  new Intl.DateTimeFormat(locale, { hour: '2-digit', minute: '2-digit' }).format(at);
