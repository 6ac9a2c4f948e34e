'use client';

import { useId } from 'react';
import { describedBy } from './describedBy';
import { FieldFrame } from './FieldFrame';
import { type Choice, Options } from './Options';

type ChoiceFieldProps<Value extends string> = Readonly<{
  label: string;
  value: Value | null;
  choices: readonly Choice<Value>[];
  onCommit: (value: Value) => void;
  /** Shown while nothing is chosen. */
  unchosen?: string | undefined;
  hint?: string | undefined;
  caution?: string | undefined;
  issue?: string | undefined;
  width?: 'narrow' | 'normal' | 'full' | undefined;
  /** True where what stands beside it says what is chosen; the name is then only spoken. */
  labelled?: boolean | undefined;
  id?: string | undefined;
}>;

/** One of several, in the system's own list, which every phone and screen reader knows. */
export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>) {
  const {
    label,
    value,
    choices,
    onCommit,
    unchosen = 'Choose',
    hint,
    caution,
    issue,
    width,
    labelled,
  } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  const choose = (text: string) => {
    const chosen = choices.find((choice) => choice.value === text);
    if (chosen) onCommit(chosen.value);
  };
  return (
    <FieldFrame {...{ id, label, hint, caution, issue, width, labelled }}>
      <select
        id={id}
        value={value ?? ''}
        aria-label={labelled ? label : undefined}
        aria-invalid={issue ? true : undefined}
        aria-describedby={describedBy(id, { hint, caution: issue ? undefined : caution, issue })}
        onChange={(event) => choose(event.target.value)}
      >
        {value === null && <option value="">{unchosen}</option>}
        <Options choices={choices} />
      </select>
    </FieldFrame>
  );
}
