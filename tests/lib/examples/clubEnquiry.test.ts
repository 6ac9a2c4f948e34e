import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { exampleQuote } from '@/app/_commands/exampleQuote';
import { exampleDocuments } from '@/lib/examples/exampleDocuments';
import { regionOf } from '@/lib/examples/regionOf';
import { customerSchema } from '@/shared/schemas/customer';
import { orderSchema } from '@/shared/schemas/order';
import type { JobInput } from '@/shared/schemas/request';
import { TODAY } from '@/tests/fixtures/clubJob';
import { ready } from '@/tests/lib/quotes/quoteTools';

const bodiesOf = (documents: ReturnType<typeof exampleDocuments>, kind: string) =>
  Object.fromEntries(documents.filter((one) => one.kind === kind).map(({ id, body }) => [id, body]));

/** The order of a first visit there, with its job and customer. */
function orderThere(language: string) {
  const documents = exampleDocuments(TODAY, regionOf(language));
  const [order] = Object.values(bodiesOf(documents, 'order'));
  const [customer] = Object.values(bodiesOf(documents, 'customer'));
  const input = {
    asOf: TODAY,
    workshop: bodiesOf(documents, 'workshop').workshop,
    blanks: bodiesOf(documents, 'blank'),
    artworks: bodiesOf(documents, 'artwork'),
    job: bodiesOf(documents, 'job')['club-order'],
    onHand: {},
    approvedVersions: { 'club-crest': 1 },
  } as JobInput;
  return { order: orderSchema.parse(order), customer: customerSchema.parse(customer), input };
}

describe('the order of a first visit', () => {
  it.each(['en-US', 'de-DE', 'ja-JP', 'ar-KW'])(
    'is quoted with both of its alternatives in %s',
    (language) => {
      const { body } = ready(orderThere(language));
      expect(body.alternatives).toHaveLength(2);
      expect(body.deposit + body.balance).toBe(body.sums.total);
    },
  );

  it('is whole: nothing of it is filled in when it is read', () => {
    const documents = exampleDocuments(TODAY);
    for (const { kind, body } of documents) {
      if (kind === 'order') expect(orderSchema.parse(body)).toEqual(body);
      if (kind === 'customer') expect(customerSchema.parse(body)).toEqual(body);
    }
    expect(documents.filter(({ kind }) => kind === 'order' || kind === 'customer')).toHaveLength(2);
  });
});

it('the file of its quote is the one that a reader can edit', () => {
  const path = fileURLToPath(new URL('../../../public/examples/club-quote.json', import.meta.url));
  expect(JSON.parse(readFileSync(path, 'utf8'))).toEqual(exampleQuote());
});
