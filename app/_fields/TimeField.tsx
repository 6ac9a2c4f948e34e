'use client';

import { useId, useState } from 'react';
import { typing } from '@/app/_documents/typing';
import { describedBy } from './describedBy';
import { FieldFrame } from './FieldFrame';

type TimeFieldProps = Readonly<{
  label: string;
  /** Minutes after midnight. */
  value: number;
  onCommit: (minute: number) => void;
  hint?: string | undefined;
  caution?: string | undefined;
  id?: string | undefined;
}>;

/** A time of the clock on the wall, in the system's own field, which writes it as the place does. */
export function TimeField({ label, value, onCommit, hint, caution, id: givenId }: TimeFieldProps) {
  const ownId = useId();
  const id = givenId ?? ownId;
  const [isEmptied, setEmptied] = useState(false);
  const issue = isEmptied ? 'A time has to stand here. The one before stays in force.' : undefined;
  return (
    <FieldFrame {...{ id, label, hint, caution, issue }} width="narrow">
      <input
        id={id}
        type="time"
        value={isEmptied ? '' : textOf(value)}
        aria-invalid={isEmptied || undefined}
        aria-describedby={describedBy(id, { hint, caution: issue ? undefined : caution, issue })}
        onChange={({ target }) => {
          const minute = minuteOf(target.value);
          setEmptied(minute === null);
          if (minute !== null) onCommit(minute);
        }}
        onBlur={() => typing.ends()}
      />
    </FieldFrame>
  );
}

/** As a time field reads it in every place: 18:05. */
function textOf(minute: number): string {
  const whole = Math.round(minute) % 1440;
  const two = (number: number) => String(number).padStart(2, '0');
  return `${two(Math.floor(whole / 60))}:${two(whole % 60)}`;
}

function minuteOf(text: string): number | null {
  const [, hours, minutes] = /^(\d\d):(\d\d)/.exec(text) ?? [];
  return hours === undefined || minutes === undefined ? null : Number(hours) * 60 + Number(minutes);
}
