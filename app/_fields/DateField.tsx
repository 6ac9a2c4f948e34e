'use client';

import { useId } from 'react';
import { describedBy } from './describedBy';
import { FieldFrame } from './FieldFrame';

type DateFieldProps = Readonly<{
  label: string;
  /** YYYY-MM-DD; null where no day is set. */
  value: string | null;
  onCommit: (value: string | null) => void;
  onRest?: (() => void) | undefined;
  hint?: string | undefined;
  caution?: string | undefined;
  issue?: string | undefined;
  width?: 'narrow' | 'normal' | 'full' | undefined;
  id?: string | undefined;
}>;

/** A day, in the system's own calendar; while it is half-typed the system shows it and no day is set. */
export function DateField(props: DateFieldProps) {
  const { label, value, onCommit, onRest, hint, caution, issue, width } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  return (
    <FieldFrame {...{ id, label, hint, caution, issue, width }}>
      <input
        id={id}
        type="date"
        value={value ?? ''}
        aria-invalid={issue ? true : undefined}
        aria-describedby={describedBy(id, { hint, caution: issue ? undefined : caution, issue })}
        onChange={(event) => onCommit(event.target.value === '' ? null : event.target.value)}
        onBlur={onRest}
      />
    </FieldFrame>
  );
}
