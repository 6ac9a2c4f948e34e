'use client';

import { useCallback, useEffect, useState } from 'react';
import { focusField } from '@/app/_controls/focusField';
import type { Reveal } from '@/app/_controls/reveal';

/** Shows a field wherever it is folded away, and takes the focus there. */
export function useReveal(): { readonly reveal: Reveal; readonly show: (fieldId: string) => void } {
  const [reveal, setReveal] = useState<Reveal>({ id: null, turn: 0 });
  const show = useCallback((id: string) => setReveal(({ turn }) => ({ id, turn: turn + 1 })), []);
  // The folds have opened in the same turn, so what they hold is there by now.
  useEffect(() => {
    if (reveal.id !== null) focusField(reveal.id);
  }, [reveal]);
  return { reveal, show };
}
