import { recordReason } from '@/app/_words/store/recordWords';
import type { ReadCopy } from '@/lib/copies/copyReading';
import { readJobInput } from '@/lib/findings/readJobInput';
import type { QuoteAsked, QuotedJob, QuotedVersion } from '@/lib/quotes/quoteAsked';
import { customerSchema } from '@/shared/schemas/customer';
import type { Entry } from '@/shared/schemas/happened';
import { type Order, orderSchema } from '@/shared/schemas/order';
import type { OrderNumber } from '@/shared/schemas/orderEvents';
import { priceListVersionSchema } from '@/shared/schemas/priceList';
import { entriesOf } from './bodiesOf';
import { chosenDraft, copyOfFile, liveOf, requestOf, whichDraft } from './copyOfFile';
import { plainContext } from './plainContext';

/** What of an order is in a file. */
type CopiedOrder =
  | {
      readonly kind: 'order';
      readonly asked: Omit<QuoteAsked, 'day' | 'load'>;
      readonly note: string | null;
      /** The bytes of a file that came with it; null where it did not. */
      readonly fileOf: ReadCopy['fileOf'];
    }
  | { readonly kind: 'unusable'; readonly why: string };

interface OfFile {
  readonly file: string;
  /** Null where none is named. */
  readonly orderId: string | null;
  /** The day it is asked on, YYYY-MM-DD. */
  readonly day: string;
}

/** What is quoted of a copy or of a carried order: the one that was carried, the only one, or the one that is named. */
export async function orderOfCopy(bytes: Uint8Array, { file, orderId, day }: OfFile): Promise<CopiedOrder> {
  const read = await copyOfFile(bytes, file, 'Nothing was quoted.');
  if (read.kind === 'unusable') return read;
  const { copy, inForce } = read;
  // An order is quoted whole or not at all: without a record that cannot be read it would be another one.
  const lost = copy.unreadable
    .filter(({ kind }) => kind !== null && needed.includes(kind))
    .map((record) => `${record.kind} ${record.id}: ${recordReason(record, plainContext)}`);
  if (lost.length > 0) return unusable(`${file} cannot be used.\n${lost.join('\n')}`);
  const draft = chosenDraft('order', copy, orderId);
  if (draft === null) return unusable(`${file} ${whichDraft('order', liveOf('order', copy), orderId)}`);
  const order = orderSchema.parse(draft.body);
  const jobs: QuotedJob[] = [];
  for (const job of liveOf('job', copy).filter(({ id }) => order.jobIds.includes(id))) {
    const input = readJobInput(requestOf(read, job, day));
    if (!input.ok) return unusable(`${file}: the job ${job.id} cannot be read.`);
    jobs.push({ jobId: job.id, input: input.value });
  }
  const customer = liveOf('customer', copy).find(({ id }) => id === order.customerId);
  return {
    kind: 'order',
    note: read.note,
    fileOf: read.fileOf,
    asked: {
      orderId: draft.id,
      order,
      orderNumber: numberOf(draft.id, inForce),
      jobs: jobs.toSorted((one, other) => placeOf(one, order) - placeOf(other, order)),
      customer: customer === undefined ? null : customerSchema.parse(customer.body),
      versions: versionsOf(read),
    },
  };
}

// Helpers

const needed = ['order', 'customer', 'job', 'blank', 'artwork', 'orderEvent', 'priceListVersion'];

const placeOf = ({ jobId }: QuotedJob, { jobIds }: Order): number => jobIds.indexOf(jobId);

/** The first that it was given stays its number. */
function numberOf(orderId: string, inForce: readonly Entry[]): OrderNumber | null {
  for (const { body } of entriesOf('orderEvent', inForce))
    if (body.orderId === orderId && body.step.what === 'enquired') return body.step.number;
  return null;
}

function versionsOf({
  copy,
  inForce,
}: Extract<Awaited<ReturnType<typeof copyOfFile>>, { readonly kind: 'copy' }>): readonly QuotedVersion[] {
  const issued = new Set(entriesOf('issuing', inForce).map(({ body }) => body.paperId));
  return copy.papers
    .filter(({ kind }) => kind === 'priceListVersion')
    .map(({ id, body }) => ({
      paperId: id,
      version: priceListVersionSchema.parse(body),
      isWithdrawn: !issued.has(id),
    }));
}

const unusable = (why: string): CopiedOrder => ({ kind: 'unusable', why });
