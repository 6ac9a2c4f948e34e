import { isPlainObject, sameValue } from '@/lib/merging/sameValue';
import type { Entry } from '@/shared/schemas/happened';
import { ERASED } from './erasedWord';
import { type Rewrite, rewritten } from './withoutTexts';

/** What was typed into such an entry of a person goes in any case; the rest is rewritten. */
const always: Readonly<Record<string, unknown>> = {
  by: ERASED,
  wish: ERASED,
  reason: ERASED,
  note: '',
  reference: '',
  proof: null,
};

const kindsOfPeople: ReadonlySet<string> = new Set([
  'orderEvent',
  'payment',
  'payout',
  'expense',
  'inkPrints',
]);

/**
 * An entry of an order whose customer was erased: what happened, when and for how much stays, who it was goes. Entries
 * are never changed but for this: the law that makes a workshop forget knows no history that must not.
 */
export function erasedEntry<Of extends Pick<Entry, 'kind' | 'body'>>(entry: Of, rewrite: Rewrite): Of {
  if (!kindsOfPeople.has(entry.kind)) return entry;
  return { ...entry, body: rewritten(emptied(entry.body), rewrite) };
}

/**
 * Whether two entries under one id are the same but that one of them was erased, here or where it comes from. Neither is
 * a clash then: what is here stays.
 */
export function isErasedForm(one: Entry, other: Entry): boolean {
  if (!kindsOfPeople.has(one.kind)) return false;
  const isErased = [one, other].some((entry) => sameValue(emptied(entry.body), entry.body));
  const bare = [one, other].map((entry) => erasedEntry(entry, () => ERASED));
  return isErased && sameValue(bare[0], bare[1]);
}

// Helpers

function emptied(value: unknown): unknown {
  if (!isPlainObject(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => [
      key,
      Object.hasOwn(always, key) ? always[key] : emptied(part),
    ]),
  );
}
