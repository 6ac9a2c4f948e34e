'use client';

import { useCallback, useEffect, useState } from 'react';
import { focusField } from '@/app/_controls/focusField';
import type { Reveal } from '@/app/_controls/reveal';
import { useHash } from '@/app/_controls/useHash';

/**
 * Shows a field wherever it is folded away, and takes the focus there.
 *
 * @param beginning of the ids of fields on this screen, by which an address that names one is known
 */
export function useReveal(beginning: string): {
  readonly reveal: Reveal;
  readonly show: (fieldId: string) => void;
} {
  const [reveal, setReveal] = useState<Reveal>({ id: null, turn: 0 });
  const show = useCallback((id: string) => setReveal(({ turn }) => ({ id, turn: turn + 1 })), []);
  // An address that names a field leads to it, from wherever it was pressed.
  const hash = useHash();
  useEffect(() => {
    if (hash.startsWith(beginning)) show(hash);
  }, [beginning, hash, show]);
  // The folds have opened in the same turn, so what they hold is there by now.
  useEffect(() => {
    if (reveal.id !== null) focusField(reveal.id);
  }, [reveal]);
  return { reveal, show };
}
