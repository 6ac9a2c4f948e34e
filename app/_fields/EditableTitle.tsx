'use client';

import { type KeyboardEvent, useRef, useState } from 'react';
import type { TextLimits } from '@/shared/limits';
import styles from './EditableTitle.module.css';
import { TitlePencil } from './TitlePencil';
import { useTextDraft } from './useTextDraft';

type EditableTitleProps = Readonly<{
  value: string;
  /** What it names, for a screen reader: “Name of the job”. */
  label: string;
  limits: TextLimits;
  onCommit: (value: string) => void;
}>;

/** A title that is renamed where it stands: press it, type, and leave it or press Enter. */
export function EditableTitle({ value, label, limits, onCommit }: EditableTitleProps) {
  const [editing, setEditing] = useState(false);
  const [before, setBefore] = useState(value);
  const button = useRef<HTMLButtonElement>(null);
  const { text, problem, change, rest } = useTextDraft({ ...limits, value, onCommit, needed: true });

  const begin = () => {
    setBefore(value);
    setEditing(true);
  };
  const finish = () => {
    rest();
    setEditing(false);
  };
  const keyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== 'Escape') return;
    event.preventDefault();
    if (event.key === 'Escape') change(before);
    finish();
    // The button comes back with the next paint.
    requestAnimationFrame(() => button.current?.focus());
  };

  if (editing)
    return (
      <span className={styles.frame}>
        <span className="visuallyHidden">{value}</span>
        <input
          className={styles.input}
          type="text"
          value={text}
          aria-label={label}
          aria-invalid={problem !== null || undefined}
          aria-describedby="title-problem"
          // Pressing the title asked for exactly this.
          ref={focusAll}
          onChange={(event) => change(event.target.value)}
          onBlur={finish}
          onKeyDown={keyDown}
        />
        <span className={styles.problem} id="title-problem" aria-live="polite">
          {problem}
        </span>
      </span>
    );
  return (
    <button className={styles.title} type="button" title="Rename" ref={button} onClick={begin}>
      {value}
      <TitlePencil />
    </button>
  );
}

// Helpers

function focusAll(input: HTMLInputElement | null) {
  if (input === null || document.activeElement === input) return;
  input.focus();
  input.select();
}
