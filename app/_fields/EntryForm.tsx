'use client';

import type { ReactNode } from 'react';
import { EnteredTogether } from './enteredTogether';

type EntryFormProps = Readonly<{
  label: string;
  className?: string | undefined;
  /** Why nothing can be entered yet. */
  missing: string | undefined;
  onEnter: () => void;
  children: ReactNode;
}>;

/**
 * A form whose fields are entered together. While a field holds a text that is no value yet, the value before it would
 * be entered in its place: the focus goes there instead, where its sentence stands, or its half-typed day.
 */
export function EntryForm({ label, className, missing, onEnter, children }: EntryFormProps) {
  return (
    <form
      className={className}
      aria-label={label}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const unread = event.currentTarget.querySelector<HTMLElement>(
          '[data-unread], [aria-invalid="true"], input:invalid',
        );
        if (unread !== null) unread.focus();
        else if (missing === undefined) onEnter();
      }}
    >
      <EnteredTogether value>{children}</EnteredTogether>
    </form>
  );
}
