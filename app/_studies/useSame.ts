import { useState } from 'react';
import { sameValue } from '@/lib/merging/sameValue';

/** @returns the value first given for as long as later ones are equal to it. */
export function useSame<Value>(value: Value): Value {
  const [kept, setKept] = useState(value);
  if (sameValue(kept, value)) return kept;
  setKept(value);
  return value;
}
