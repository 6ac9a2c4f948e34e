'use client';

import { useState } from 'react';
import type { ZodType } from 'zod';
import { z } from '@/shared/schemas/z';
import { formMemory, type HalfTyped, halfTyped, type OrderForm } from './formMemory';

/**
 * A field of a form of an order or a stall day, remembered until the form is entered or left.
 *
 * @param schema of what is taken from the browser's memory
 * @param fresh what stands there while nobody has typed in it
 */
export function useTyped<Value>(
  form: OrderForm,
  field: string,
  schema: ZodType<Value>,
  fresh: Value,
): readonly [Value, (value: Value) => void] {
  const [typed, setTyped] = useState<{ readonly value: Value } | null>(() => {
    const known = schema.safeParse(formMemory.recall(form, field));
    return known.success ? { value: known.data } : null;
  });
  const [wasErased, setWasErased] = useState(form.isErased);
  if (form.isErased !== wasErased) {
    setWasErased(form.isErased);
    // In another tab perhaps: what stands here goes too.
    if (form.isErased) setTyped(null);
  }
  const set = (value: Value) => {
    setTyped({ value });
    formMemory.remember(form, field, value);
  };
  return [typed === null ? fresh : typed.value, set];
}

/** What a field of a form is given. */
export interface TypedField<Value> {
  readonly value: Value;
  readonly onCommit: (value: Value) => void;
  readonly half: HalfTyped;
}

export function useTypedText(form: OrderForm, field: string, fresh = ''): TypedField<string> {
  const [value, onCommit] = useTyped(form, field, z.string(), fresh);
  return { value, onCommit, half: halfTyped(form, field) };
}

export function useTypedNumber(
  form: OrderForm,
  field: string,
  fresh: number | null = null,
): TypedField<number | null> {
  const [value, onCommit] = useTyped(form, field, z.number().nullable(), fresh);
  return { value, onCommit, half: halfTyped(form, field) };
}

/** @param words of everything that can be chosen */
export function useTypedChoice<Value extends string, Fresh extends Value | null>(
  form: OrderForm,
  field: string,
  words: Readonly<Record<Value, string>>,
  fresh: Fresh,
): readonly [Value | Fresh, (value: Value) => void] {
  const [typed, set] = useTyped<string | null>(form, field, z.string().nullable(), fresh);
  const isChoice = (value: string | null): value is Value => value !== null && Object.hasOwn(words, value);
  return [isChoice(typed) ? typed : fresh, set];
}
