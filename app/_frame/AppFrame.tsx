'use client';

import { type ReactNode, useMemo } from 'react';
import { useMaker } from '../_documents/useMaker';
import { MakerMeasures, measuresOf } from '../_fields/makerMeasures';
import { NumberLocale } from '../_fields/numberLocale';
import { KeptState } from '../_shell/KeptState';
import { Shell } from '../_shell/Shell';
import { UndoRedo } from '../_shell/UndoRedo';
import { notKeptText } from '../_text/notKeptText';
import { usableLocale } from '../_text/usableLocale';
import { OverwrittenNote } from './OverwrittenNote';
import { useUndoKeys } from './useUndoKeys';

/** Header, what is kept, undo and redo: around every screen, and the same one while screens change. */
export function AppFrame({ children }: Readonly<{ children: ReactNode }>) {
  const { status, kept, undo, redo, undoLabel, redoLabel, retry, workshop, ...rest } = useMaker();
  useUndoKeys(undo, redo);
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
              onUndo={() => void undo()}
              onRedo={() => void redo()}
            />
            <KeptState
              kept={
                kept.state === 'kept'
                  ? { kind: 'kept', at: clock(kept.at, locale) }
                  : kept.state === 'keeping'
                    ? { kind: 'keeping' }
                    : { kind: 'notKept', why: notKeptText[kept.why] }
              }
              onRetry={() => void retry()}
            />
          </>
        )
      }
    >
      <OverwrittenNote
        fields={rest.overwritten}
        documents={rest.documents}
        onSeen={rest.acknowledgeOverwritten}
      />
      <NumberLocale value={locale}>
        <MakerMeasures value={measures}>{children}</MakerMeasures>
      </NumberLocale>
    </Shell>
  );
}

const clock = (at: number, locale: string): string =>
  new Intl.DateTimeFormat(locale, { hour: '2-digit', minute: '2-digit' }).format(at);
