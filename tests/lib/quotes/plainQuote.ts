import type { QuoteDraft } from '@/lib/quotes/makeQuote';
import type { Channel } from '@/shared/schemas/workshop';
import { DAY, fixedRate } from '@/tests/fixtures/numbers';
import { type PlainSize, plainJob } from '@/tests/fixtures/plainJob';
import { clubCustomer, ready } from './quoteTools';

interface PlainQuote {
  readonly sizes: readonly PlainSize[];
  readonly asked?: number;
  readonly freight?: number;
  readonly targetMargin?: number;
  readonly tax?: { readonly mode: Channel['taxMode']; readonly share: number; readonly rounding?: 'line' };
  readonly currency?: string;
  readonly order?: object;
  readonly exemption?: string;
}

/** A job in which nothing but blanks and freight costs anything, and how its prices stand to tax. */
export function plainInput({ sizes, asked, freight, targetMargin, tax, currency }: PlainQuote) {
  const input = plainJob({
    sizes,
    ...(asked === undefined ? {} : { asked }),
    ...(freight === undefined ? {} : { freight }),
    ...(targetMargin === undefined ? {} : { rates: { targetMargin } }),
    channel:
      tax === undefined
        ? {}
        : { taxMode: tax.mode, tax: tax.mode === null ? null : fixedRate(tax.share, 'share') },
  });
  const policy = {
    ...input.workshop.policy,
    breaks: [1, 10],
    taxRounding: tax?.rounding ?? ('document' as const),
  };
  return {
    ...input,
    workshop: { ...input.workshop, policy, currency: currency ?? input.workshop.currency },
    job: { ...input.job, wantedOn: null },
  };
}

/** Its quote. */
export const plainQuote = (plain: PlainQuote): QuoteDraft['body'] =>
  ready({
    input: plainInput(plain),
    day: DAY,
    customer: clubCustomer({
      exemption:
        plain.exemption === undefined ? null : { number: plain.exemption, validUntil: null, proof: null },
    }),
    order: { exempt: plain.exemption !== undefined, ...plain.order },
  }).body;
