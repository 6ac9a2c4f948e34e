'use client';

import type { ReactNode } from 'react';
import { TextField } from '@/app/_fields/TextField';
import { useTypedText } from '@/app/_fields/useTyped';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { closesHeldWords, closesWords, doesNotCountWords } from '@/app/_words/orders/notes/orderNoteWords';
import { stepWords } from '@/app/_words/orders/notes/orderStepWords';
import { toGiveBackMinor } from '@/lib/orders/money/settlement';
import { shutGates } from '@/lib/orders/shutGates';
import { isMoving } from '@/lib/orders/stepOrder';
import { textLimits } from '@/shared/limits';
import { orderEventSchema } from '@/shared/schemas/orderEvents';
import { NoteFrame } from './NoteFrame';
import styles from './Notes.module.css';
import { isOfVersions, type PlainStep } from './plainStep';
import type { StepNoteProps } from './stepNote';
import { type Noted, useNoting } from './useNoting';

type PlainNoteProps = StepNoteProps &
  Readonly<{
    what: PlainStep;
    /** What is noted with it in the same step. */
    also?: (day: string) => Noted;
    children?: ReactNode;
  }>;

/** A step with nothing to tell but its day and a note; what brings the order on names the versions of its pictures. */
export function PlainNote({ on, form, what, also, children, onDone, onLeave }: PlainNoteProps) {
  const { facts, standing, locale, who } = on;
  const text = useTypedText(form, 'note');
  const { problem, note } = useNoting(on, form);
  const step = isOfVersions(what)
    ? ({
        what,
        note: text.value.trim(),
        ...(facts.artworks.length > 0 && { versions: [...facts.artworks] }),
      } as const)
    : ({ what, note: text.value.trim() } as const);
  const backMinor = toGiveBackMinor(standing);
  const shut = isMoving(step) ? shutGates(standing, step.what) : [];
  return (
    <NoteFrame
      name={stepWords[what]}
      {...{ on, form, problem, onLeave }}
      onEnter={(day) => {
        const event = { kind: 'orderEvent', body: { orderId: facts.orderId, day, step } } as const;
        // The step is what happened last.
        if (note(stepWords[what], [...(also?.(day) ?? []), event])) onDone();
      }}
    >
      {shut.length > 0 && <p className={styles.caution}>{doesNotCountWords(shut)}</p>}
      {what === 'closed' && backMinor > 0 && (
        <p className={styles.caution}>
          {closesHeldWords(minorMoney(backMinor, standing.money.currency, locale), who)}
        </p>
      )}
      {what === 'closed' && <p className={styles.told}>{closesWords}</p>}
      {children}
      <TextField
        label="Note"
        width="full"
        {...text}
        {...textLimits(orderEventSchema, ['step', 'note'])}
        hint="May stay empty."
      />
    </NoteFrame>
  );
}
