'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { TextField } from '@/app/_fields/TextField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { Finding } from '@/shared/finding';
import { textLimits } from '@/shared/limits';
import { type OwnRow, ownRowSchema } from '@/shared/schemas/ownRow';
import styles from './FormulaField.module.css';
import { NameHelp } from './NameHelp';

type FormulaFieldProps = Readonly<{
  id: string;
  formula: string;
  /** Findings about this formula. */
  problems: readonly Finding[];
  everyRow: readonly OwnRow[];
  placements: number;
  onCommit: (formula: string) => void;
}>;

/** A formula over the names of the grid; a bad one stays as typed, and the place of its error is shown. */
export function FormulaField({ id, formula, problems, everyRow, placements, onCommit }: FormulaFieldProps) {
  const context = useTextContext();
  // While a formula is being typed it is wrong at nearly every letter: it is judged when the typing rests.
  const [typing, setTyping] = useState(false);
  const [problem] = typing ? [] : problems;
  const words = problem === undefined ? null : findingWords(problem, context);
  const fix = problem?.id === 'ROW-01' ? problem.fix : null;
  const mended = fix?.changes[0]?.value;
  const at = problem?.id === 'ROW-01' ? problem.facts.at - 1 : null;
  const long = problem?.id === 'ROW-01' && 'text' in problem.facts ? problem.facts.text.length : 1;

  const insert = (name: string) => {
    const field = document.getElementById(id);
    const isText = field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement;
    const from = (isText ? field.selectionStart : null) ?? formula.length;
    const to = (isText ? field.selectionEnd : null) ?? from;
    onCommit(`${formula.slice(0, from)}${name}${formula.slice(to)}`);
    if (!isText) return;
    field.focus();
    // The caret can be put behind the name only once the field shows it.
    requestAnimationFrame(() => field.setSelectionRange(from + name.length, from + name.length));
  };

  return (
    <div className={styles.formula}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: hears when the field inside is entered and left */}
      <div onFocus={() => setTyping(true)} onBlur={() => setTyping(false)}>
        <TextField
          label="Cost of one good piece, as a formula"
          id={id}
          value={formula}
          rows={2}
          needed
          {...textLimits(ownRowSchema, ['cost', 'formula'])}
          width="full"
          issue={words === null ? undefined : `${words.sentence} ${words.detail}`}
          onCommit={onCommit}
        />
      </div>
      {at !== null && (
        <p className={styles.place} aria-hidden="true">
          {formula.slice(0, at)}
          <mark className={styles.mark}>{formula.slice(at, at + long) || ' '}</mark>
          {formula.slice(at + long)}
        </p>
      )}
      {fix != null && typeof mended === 'string' && (
        <Button onPress={() => onCommit(mended)}>{words?.fixLabel}</Button>
      )}
      <NameHelp everyRow={everyRow} placements={placements} onInsert={insert} />
    </div>
  );
}
