'use client';

import { useState } from 'react';

type TextDraft = Readonly<{
  value: string;
  onCommit: (value: string) => void;
  onRest?: (() => void) | undefined;
  /** True where the document has no place for an empty text. */
  needed?: boolean | undefined;
  longest?: number | undefined;
}>;

/**
 * The text of a field: kept exactly as typed, and committed whenever the document can take it. Documents trim
 * names, so a space typed at the end would be gone before the next letter came.
 */
export function useTextDraft({ value, onCommit, onRest, needed = false, longest }: TextDraft) {
  const [draft, setDraft] = useState<string | null>(null);
  const [seen, setSeen] = useState(value);
  if (value !== seen) {
    setSeen(value);
    // Changed from outside, by undo or a fix: what was being typed is over.
    if (draft !== null && draft.trim() !== value.trim()) setDraft(null);
  }
  const text = draft ?? value;
  const over = longest === undefined ? 0 : text.trim().length - longest;
  const missing = needed && text.trim() === '';
  return {
    text,
    problem: missing
      ? `Something has to stand here. “${value}” stays in force.`
      : over > 0
        ? `${over} letters too long: ${longest} fit here.`
        : null,
    change: (typed: string) => {
      setDraft(typed);
      const tooLong = longest !== undefined && typed.trim().length > longest;
      if (!tooLong && !(needed && typed.trim() === '') && typed !== value) onCommit(typed);
    },
    rest: () => {
      if (!missing && over <= 0) setDraft(null);
      onRest?.();
    },
  };
}
