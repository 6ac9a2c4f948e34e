'use client';

import { useId } from 'react';
import { describedBy } from './describedBy';
import { FieldFrame } from './FieldFrame';

type TextFieldProps = Readonly<{
  label: string;
  value: string;
  onCommit: (value: string) => void;
  onRest?: (() => void) | undefined;
  hint?: string | undefined;
  issue?: string | undefined;
  /** More than one makes room for several lines. */
  rows?: number | undefined;
  /** Told as an issue when passed; nothing is cut off. */
  longest?: number | undefined;
  width?: 'narrow' | 'normal' | 'full' | undefined;
  id?: string | undefined;
}>;

/** Words: a name, a reason, a note. */
export function TextField(props: TextFieldProps) {
  const { label, value, onCommit, hint, rows = 1, longest, width } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  const over = longest === undefined ? 0 : Array.from(value).length - longest;
  const issue = over > 0 ? `${over} letters too long: ${longest} fit here.` : props.issue;
  const control = {
    id,
    value,
    'aria-invalid': issue ? true : undefined,
    'aria-describedby': describedBy(id, { hint, issue }),
    onChange: (event: { target: { value: string } }) => onCommit(event.target.value),
    onBlur: () => props.onRest?.(),
  };
  return (
    <FieldFrame {...{ id, label, hint, issue, width }}>
      {rows > 1 ? <textarea {...control} rows={rows} /> : <input {...control} type="text" />}
    </FieldFrame>
  );
}
