import { sameValue } from '@/lib/merging/sameValue';
import type { Entry } from '@/shared/schemas/happened';
import { ERASED } from './erasedWord';
import { changedAt, textsAt } from './placesIn';
import { typedTexts } from './typedTexts';
import { type Rewrite, rewritten } from './withoutTexts';

/** What of the entries of a person goes in any case, and what stands there then; the rest is rewritten. */
const always: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  orderEvent: {
    'step.by': ERASED,
    'step.wish': ERASED,
    'step.reason': ERASED,
    'step.note': '',
    'step.proof': null,
  },
  payment: { note: '' },
  payout: { reference: '' },
  expense: {},
  inkPrints: {},
};

/**
 * An entry of an order whose customer was erased: what happened, when and for how much stays, who it was goes. Entries
 * are never changed but for this: the law that makes a workshop forget knows no history that must not.
 */
export function erasedEntry<Of extends Pick<Entry, 'kind' | 'body'>>(entry: Of, rewrite: Rewrite): Of {
  if (!Object.hasOwn(always, entry.kind)) return entry;
  return { ...entry, body: rewritten(entry.kind, emptied(entry), rewrite) };
}

/**
 * Whether two entries under one id are the same but that one of them was erased, here or where it comes from. Neither is
 * a clash then: what is here stays. Whatever else differs is a clash.
 */
export const isErasedForm = (one: Entry, other: Entry): boolean =>
  Object.hasOwn(always, one.kind) && (isErasedOf(one, other) || isErasedOf(other, one));

// Helpers

const emptied = ({ kind, body }: Pick<Entry, 'kind' | 'body'>): unknown =>
  Object.entries(always[kind] ?? {}).reduce<unknown>(
    (value, [path, empty]) => changedAt(value, path, () => empty),
    body,
  );

function isErasedOf(erased: Entry, full: Entry): boolean {
  const { kind } = erased;
  const bare = { ...full, body: emptied(full) };
  const withoutTexts = (entry: Entry) => ({ ...entry, body: rewritten(kind, entry.body, () => ERASED) });
  return (
    sameValue(emptied(erased), erased.body) &&
    sameValue(withoutTexts(erased), withoutTexts(bare)) &&
    (typedTexts[kind] ?? []).every((path) => {
      const texts = textsAt(bare.body, path);
      return textsAt(erased.body, path).every((text, index) => isRewrittenOf(text, texts[index] ?? ''));
    })
  );
}

/** @returns whether one text is the other with something taken out of it */
function isRewrittenOf(erased: string, full: string): boolean {
  const [first = '', ...others] = erased.split(ERASED);
  const last = others.pop();
  if (last === undefined) return erased === full;
  if (!full.startsWith(first)) return false;
  let at = first.length;
  for (const part of others) {
    // Something stood in the place.
    const next = full.indexOf(part, at + 1);
    if (next < 0) return false;
    at = next + part.length;
  }
  return full.endsWith(last) && full.length - last.length > at;
}
