import { isPlainObject } from '@/lib/merging/sameValue';
import { inOrder } from '@/lib/stored/entriesInForce';
import type { Entry, Paper } from '@/shared/schemas/happened';

/**
 * By what letter each device is known: the one on its latest number, for a device that met another of its letter took
 * a new one.
 *
 * @param own this device; null while it has numbered nothing
 */
export function deviceLetters(
  entries: readonly Entry[],
  papers: readonly Paper[],
  own: { readonly id: string; readonly letter: string } | null,
): ReadonlyMap<string, string> {
  const letters = new Map<string, string>();
  for (const one of inOrder<Entry | Paper>([...entries, ...papers])) {
    const letter = 'number' in one ? one.number.letter : letterOfEnquiry(one.body);
    if (letter !== null) letters.set(one.device, letter);
  }
  if (own !== null) letters.set(own.id, own.letter);
  return letters;
}

function letterOfEnquiry(body: unknown): string | null {
  const step = isPlainObject(body) ? body.step : undefined;
  const number = isPlainObject(step) ? step.number : undefined;
  const letter = isPlainObject(number) ? number.letter : undefined;
  return typeof letter === 'string' ? letter : null;
}
