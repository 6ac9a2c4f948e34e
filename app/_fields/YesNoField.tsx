'use client';

import { ChoiceField } from './ChoiceField';

type YesNoFieldProps = Readonly<{
  label: string;
  value: boolean | null;
  onCommit: (value: boolean) => void;
  hint?: string | undefined;
  id?: string | undefined;
}>;

const answers = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
] as const;

/** A question that may still be open: yes, no, or not yet said. */
export function YesNoField({ value, onCommit, ...rest }: YesNoFieldProps) {
  return (
    <ChoiceField
      {...rest}
      value={value === null ? null : value ? 'yes' : 'no'}
      unchosen="Not yet said"
      choices={answers}
      onCommit={(answer) => onCommit(answer === 'yes')}
    />
  );
}
