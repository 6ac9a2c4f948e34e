'use client';

import { useState } from 'react';
import { typing } from '@/app/_documents/typing';
import type { HalfTyped } from './formMemory';

interface TextDraft {
  readonly value: string;
  readonly onCommit: (value: string) => void;
  readonly onRest?: (() => void) | undefined;
  /** True where the document has no place for an empty text. */
  readonly needed?: boolean | undefined;
  readonly longest?: number | undefined;
  /** False where the document keeps spaces at the ends, so that they count too. */
  readonly isTrimmed?: boolean | undefined;
  /** Keeps a text that the document cannot take where a reload finds it again. */
  readonly half?: HalfTyped | undefined;
}

/**
 * The text of a field: kept exactly as typed, and committed whenever the document can take it. Documents trim
 * names, so a space typed at the end would be gone before the next letter came.
 */
export function useTextDraft(props: TextDraft) {
  const { value, onCommit, onRest, needed = false, longest, isTrimmed = true, half } = props;
  const [draft, setDraft] = useState<string | null>(() => half?.recall() ?? null);
  const [seen, setSeen] = useState(value);
  if (value !== seen) {
    setSeen(value);
    // Changed from outside, by undo or a fix: what was being typed is over.
    if (draft !== null && draft.trim() !== value.trim()) setDraft(null);
  }
  const text = draft ?? value;
  const overBy = (typed: string) =>
    longest === undefined ? 0 : (isTrimmed ? typed.trim() : typed).length - longest;
  const over = overBy(text);
  const missing = needed && text.trim() === '';
  return {
    text,
    problem: missing
      ? `Something has to stand here. “${value}” stays in force.`
      : over > 0
        ? `${over} letters too long: ${longest} fit here.`
        : null,
    change: (typed: string) => {
      typing.goes(text, typed);
      setDraft(typed);
      const isTaken = overBy(typed) <= 0 && !(needed && typed.trim() === '');
      half?.remember(isTaken ? null : typed);
      if (isTaken && typed !== value) onCommit(typed);
    },
    rest: () => {
      if (!missing && over <= 0) setDraft(null);
      typing.ends();
      onRest?.();
    },
  };
}
