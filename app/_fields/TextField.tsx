'use client';

import { useId } from 'react';
import { describedBy } from './describedBy';
import { FieldFrame } from './FieldFrame';
import type { HalfTyped } from './formMemory';
import { useTextDraft } from './useTextDraft';

type TextFieldProps = Readonly<{
  label: string;
  value: string;
  onCommit: (value: string) => void;
  onRest?: (() => void) | undefined;
  /** True where the document has no place for an empty text. */
  needed?: boolean | undefined;
  hint?: string | undefined;
  caution?: string | undefined;
  issue?: string | undefined;
  /** More than one makes room for several lines. */
  rows?: number | undefined;
  /** Told as an issue when passed; nothing is cut off. */
  longest?: number | undefined;
  /** False where the document keeps spaces at the ends, so that they count too. */
  isTrimmed?: boolean | undefined;
  /** What holds while nothing is typed. */
  placeholder?: string | undefined;
  width?: 'narrow' | 'normal' | 'full' | undefined;
  /** True where what stands beside it says what is typed; the name is then only spoken. */
  labelled?: boolean | undefined;
  /** Which keys a phone offers. */
  inputMode?: 'text' | 'numeric' | undefined;
  /** Offered while one line is typed; anything else may be typed as well. */
  suggestions?: readonly string[] | undefined;
  id?: string | undefined;
  /** Keeps a text that is too long where a reload finds it again. */
  half?: HalfTyped | undefined;
}>;

/** Words: a name, a reason, a note. */
export function TextField(props: TextFieldProps) {
  const { label, hint, caution, rows = 1, placeholder, width, labelled, inputMode, suggestions } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  const { text, problem, change, rest } = useTextDraft(props);
  const issue = problem ?? props.issue;
  const control = {
    id,
    value: text,
    placeholder,
    // Names of any script begin on their own side.
    dir: 'auto',
    'aria-label': labelled ? label : undefined,
    inputMode,
    'aria-invalid': issue ? true : undefined,
    'aria-describedby': describedBy(id, { hint, caution: issue ? undefined : caution, issue }),
    onChange: (event: { target: { value: string } }) => change(event.target.value),
    onBlur: rest,
  };
  const list = rows === 1 && suggestions !== undefined ? { list: `${id}-offers`, autoComplete: 'off' } : null;
  return (
    <FieldFrame {...{ id, label, hint, caution, issue, width, labelled }}>
      {rows > 1 ? <textarea {...control} rows={rows} /> : <input {...control} {...list} type="text" />}
      {list !== null && (
        <datalist id={list.list}>
          {suggestions?.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      )}
    </FieldFrame>
  );
}
