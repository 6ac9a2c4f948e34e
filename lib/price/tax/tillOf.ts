import type { ResolvedJob } from '@/lib/job/checkedJob';
import { type MinorUnits, toMinor } from '@/shared/money';
import { roundCash } from '@/shared/roundCash';
import { type DocumentLine, documentTax } from './documentTax';
import type { Taxed } from './taxOf';

/** What the buyer pays for a job, whole minor units. */
export interface Till {
  readonly total: Taxed;
  readonly mode: 'added' | 'inside' | 'none';
  readonly rounding: 'document' | 'line';
  /** The same in coins and notes, at a stall only; null elsewhere, or where coins pay every total. */
  readonly inCash: MinorUnits | null;
}

/**
 * What the buyer pays for a job at its asked prices, as a paper says it.
 *
 * @returns null while a price is not decided, or nobody has said how tax stands to it
 */
export function tillOf(job: ResolvedJob): Till | null {
  const { channel, workshop } = job;
  const { currency, policy } = workshop;
  const total = orderTotal(job);
  if (channel.taxMode === null || total === null) return null;
  const cash = channel.kind === 'stall' ? roundCash(total.with, currency) : total.with;
  return {
    total,
    mode: channel.taxMode,
    rounding: policy.taxRounding,
    inCash: cash === total.with ? null : cash,
  };
}

/**
 * The asked prices of a job as a paper adds them up: each size of each line is a line of it,
 * and what an order of it pays once.
 *
 * @returns null while a price is not decided; without tax while nobody has said how tax stands to it
 */
export function orderTotal({ lines, channel, workshop }: ResolvedJob): Taxed | null {
  const { currency, policy } = workshop;
  const share = channel.taxMode === null || channel.taxMode === 'none' ? 0 : channel.tax.value;
  const written: DocumentLine[] = [];
  for (const { sizes } of lines) {
    for (const size of sizes) {
      if (size.askedPrice === null) return null;
      const each = toMinor(size.askedPrice, currency);
      written.push({ amount: (each * size.quantity) as MinorUnits, tax: share });
    }
    const start = toMinor(sizes[0]?.askedStart ?? 0, currency);
    if (start > 0) written.push({ amount: start, tax: share });
  }
  return documentTax(written, {
    currency,
    mode: channel.taxMode === 'inside' ? 'inside' : 'added',
    rounding: policy.taxRounding,
  }).total;
}
