'use client';

import { startTransition, useEffect, useState } from 'react';

/**
 * How many of several large parts are to be drawn by now: one more after each has been seen. Drawn together they would
 * hold up a phone for a second; in turn, each between the keys, none does.
 */
export function useInTurn(count: number): number {
  const [drawn, setDrawn] = useState(0);
  useEffect(() => {
    if (drawn < count) startTransition(() => setDrawn(drawn + 1));
  }, [drawn, count]);
  return drawn;
}
