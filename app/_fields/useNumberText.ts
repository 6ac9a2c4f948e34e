'use client';

import { type KeyboardEvent, useContext, useState } from 'react';
import { typing } from '@/app/_documents/typing';
import { judgeNumber, type NumberRules } from '@/app/_numbers/judgeNumber';
import { useNumberLocale } from '@/app/_numbers/numberLocale';
import { numberProblemWords } from '@/app/_words/fields/numberProblemWords';
import { oneOf } from '@/app/_words/unitWords';
import { formatNumber } from '@/shared/formatNumber';
import { EnteredTogether } from './enteredTogether';
import type { HalfTyped } from './formMemory';

export type NumberText = NumberRules &
  Readonly<{
    /** The value in force. The owner applies a commit before the next key, or the text would jump back. */
    value: number | null;
    onCommit: (value: number | null) => void;
    /** Told when the field is left or Enter pressed: one stretch of typing is over. */
    onRest?: (() => void) | undefined;
    /** Decimals always shown while nobody types. */
    minDecimals?: number | undefined;
    unit?: string | undefined;
    /** What holds while it is empty, as a sentence; else nothing does. */
    whenEmpty?: string | undefined;
    /** Keeps a text that is no value yet where a reload finds it again. */
    half?: HalfTyped | undefined;
  }>;

/** The text of a number field: kept exactly as typed until it is a number that may be committed. */
export function useNumberText(props: NumberText) {
  const { value, onCommit, onRest, half } = props;
  const locale = useNumberLocale();
  const isKept = !useContext(EnteredTogether);
  const [draft, setDraft] = useState<string | null>(() => half?.recall() ?? null);
  const [focused, setFocused] = useState(false);
  const [seen, setSeen] = useState(value);
  const judged = draft === null ? null : judgeNumber(draft, locale, props);
  if (value !== seen) {
    setSeen(value);
    // Changed from outside, by undo or a fix: what was being typed is over.
    if (judged && !(judged.kind === 'good' && judged.value === value)) setDraft(null);
  }

  const change = (text: string) => {
    typing.goes(draft ?? shown(props, locale), text);
    setDraft(text);
    const next = judgeNumber(text, locale, props);
    half?.remember(next.kind === 'good' ? null : text);
    if (next.kind === 'good' && next.value !== value) onCommit(next.value);
  };
  const rest = () => {
    if (judged?.kind === 'good') setDraft(null);
    typing.ends();
    onRest?.();
  };
  const keyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') rest();
    if (event.key !== 'Escape' || draft === null) return;
    // The first Escape mends the text; only the next may close what the field stands in.
    event.stopPropagation();
    setDraft(null);
    half?.remember(null);
  };

  const problem = judged?.kind === 'problem' ? judged.problem : null;
  const waiting = focused && (problem?.kind === 'unfinished' || problem?.kind === 'missing');
  return {
    waiting,
    problem:
      problem &&
      [numberProblemWords(problem, draft ?? '', locale), ...(isKept ? [inForce(props, locale)] : [])].join(
        ' ',
      ),
    input: {
      type: 'text',
      inputMode: negativeAllowed(props) ? 'text' : props.decimals === 0 ? 'numeric' : 'decimal',
      autoComplete: 'off',
      spellCheck: false,
      value: draft ?? shown(props, locale),
      'aria-invalid': (problem !== null && !waiting) || undefined,
      'data-unread': problem !== null || undefined,
      onChange: (event: { target: { value: string } }) => change(event.target.value),
      onFocus: () => setFocused(true),
      onBlur: () => {
        setFocused(false);
        rest();
      },
      onKeyDown: keyDown,
    },
  } as const;
}

// Helpers

/** Number pads of phones have no minus. */
const negativeAllowed = ({ min, above }: NumberRules) => (min ?? above ?? -1) < 0;

function shown({ value, minDecimals }: NumberText, locale: string): string {
  return value === null ? '' : formatNumber(value, locale, { minDecimals: minDecimals ?? 0 });
}

function inForce(props: NumberText, locale: string): string {
  const [last, { unit, whenEmpty }] = [shown(props, locale), props];
  if (last === '') return whenEmpty ?? 'Nothing is in force until then.';
  return `${last}${unit ? ` ${last === '1' ? oneOf(unit) : unit}` : ''} stays in force.`;
}
