import { paperNumberText } from '@/app/_words/paperNumberText';
import { paperFacts } from '@/lib/kinds/paperFacts';
import { isPlainObject } from '@/lib/merging/sameValue';
import { orderNumberText, seriesNumberText, versionText } from '@/shared/orderNumberText';
import type { Paper } from '@/shared/schemas/happened';
import { orderNumberSchema } from '@/shared/schemas/orderEvents';
import { daySchema } from '@/shared/schemas/rate';

/**
 * As much is read of its body as its number needs: papers of a later version of the app are told as well.
 *
 * @returns a paper as a sentence names it: “quote 26-014A, version 2”, “invoice 26-007A”
 */
export function paperText({ kind, number, body }: Pick<Paper, 'kind' | 'number' | 'body'>): string {
  const word = isPaperKind(kind) ? paperFacts[kind].word : 'paper';
  const said = isPlainObject(body) ? body : {};
  const order = orderNumberSchema.safeParse(said.order);
  const issuedOn = daySchema.safeParse(said.issuedOn);
  if ((kind === 'quote' || kind === 'confirmation') && order.success)
    return `${word} ${orderNumberText(order.data)}, version ${versionText(number, order.data)}`;
  return issuedOn.success && !countedAlone.has(kind)
    ? `${word} ${seriesNumberText(number, issuedOn.data)}`
    : `${word} ${paperNumberText(number)}`;
}

// Helpers

/** Numbered by the draft they are of, not by the year. */
const countedAlone: ReadonlySet<string> = new Set(['priceListVersion', 'stallPlan', 'dayClose']);

const isPaperKind = (kind: string): kind is keyof typeof paperFacts => Object.hasOwn(paperFacts, kind);
