'use client';

import { useContext, useId, useState } from 'react';
import { typing } from '@/app/_documents/typing';
import { describedBy } from './describedBy';
import { EnteredTogether } from './enteredTogether';
import { FieldFrame } from './FieldFrame';

type DateFieldProps = Readonly<{
  label: string;
  /** YYYY-MM-DD; null where no day is set. */
  value: string | null;
  onCommit: (value: string | null) => void;
  /** True where the document has no place for no day: an emptied field is told and keeps the day before. */
  needed?: boolean | undefined;
  onRest?: (() => void) | undefined;
  hint?: string | undefined;
  caution?: string | undefined;
  issue?: string | undefined;
  width?: 'narrow' | 'normal' | 'full' | undefined;
  id?: string | undefined;
}>;

/** A day, in the system's own calendar; while it is half-typed the system shows it and no day is set. */
export function DateField(props: DateFieldProps) {
  const { label, value, onCommit, onRest, needed = false, hint, caution, width } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  const [isEmptied, setEmptied] = useState(false);
  const isKept = !useContext(EnteredTogether);
  const missing = isKept
    ? 'A day has to stand here. The one before stays in force.'
    : 'A day has to stand here.';
  const issue = isEmptied ? missing : props.issue;
  return (
    <FieldFrame {...{ id, label, hint, caution, issue, width }}>
      <input
        id={id}
        type="date"
        value={isEmptied ? '' : (value ?? '')}
        aria-invalid={issue ? true : undefined}
        aria-describedby={describedBy(id, { hint, caution: issue ? undefined : caution, issue })}
        onChange={({ target }) => {
          setEmptied(needed && target.value === '');
          if (target.value !== '' || !needed) onCommit(target.value === '' ? null : target.value);
        }}
        onBlur={() => {
          if (needed) typing.ends();
          onRest?.();
        }}
      />
    </FieldFrame>
  );
}
