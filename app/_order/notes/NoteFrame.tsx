'use client';

import { type ReactNode, useEffect, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { formMemory } from '@/app/_fields/formMemory';
import { useTyped } from '@/app/_fields/useTyped';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { dayQuestion, type WentOut } from '@/app/_words/orders/orderDayWords';
import { daySchema } from '@/shared/schemas/rate';
import styles from './Notes.module.css';
import type { OpenForm } from './useOpenForm';

type NoteFrameProps = Readonly<{
  /** What is noted. */
  name: string;
  on: Pick<OrderOnScreen, 'today' | 'formatter'>;
  form: OpenForm;
  /** Why nothing can be noted yet. */
  missing?: string | undefined;
  /** Whether a field asks something, which keeps nobody from noting it. */
  isAsked?: boolean;
  /** Why the last try was not taken. */
  problem: string | null;
  /** The day it is said to have happened, to begin with; today where left out. */
  day?: string;
  /** What this answers: it cannot well have been answered before it went out. */
  out?: WentOut | null;
  onEnter: (day: string) => void;
  onLeave: () => void;
  children?: ReactNode;
}>;

/** What happened, and on which day: that of today, unless another is set. */
export function NoteFrame(props: NoteFrameProps) {
  const { name, on, form, missing, isAsked = false, problem, onEnter, onLeave, children } = props;
  const { today, formatter } = on;
  const [day, setDay] = useTyped(form, 'day', daySchema, props.day ?? today);
  const frame = useRef<HTMLDivElement>(null);
  const { isFound } = form;
  useEffect(() => {
    // Opened to be typed in, unless it opened by itself.
    if (!isFound) frame.current?.querySelector<HTMLElement>('input, select, textarea')?.focus();
  }, [isFound]);
  const leave = () => {
    formMemory.forget(form);
    onLeave();
  };
  const question = dayQuestion(day, today, formatter, props.out);
  return (
    <div ref={frame}>
      <EntryForm className={styles.form} label={name} missing={missing} onEnter={() => onEnter(day)}>
        {children}
        <FieldGroup>
          <DateField
            label="Day"
            width="narrow"
            needed
            value={day}
            caution={question ?? undefined}
            hint={day === today ? 'Set it back where it happened earlier.' : 'Noted later.'}
            onCommit={(value) => setDay(value ?? today)}
          />
        </FieldGroup>
        <p className={styles.problem} role="alert">
          {problem}
        </p>
        <div className={styles.acts}>
          <Button type="submit" kind="strong" blockedBy={missing}>
            {question === null && !isAsked ? 'Note it' : 'Note it all the same'}
          </Button>
          <Button kind="quiet" onPress={leave}>
            Leave it
          </Button>
        </div>
      </EntryForm>
    </div>
  );
}
