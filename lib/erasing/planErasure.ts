import { isPlainObject, sameValue } from '@/lib/merging/sameValue';
import { customerSchema } from '@/shared/schemas/customer';
import type { Entry, Paper } from '@/shared/schemas/happened';
import { type Job, jobSchema } from '@/shared/schemas/job';
import { type Order, orderSchema } from '@/shared/schemas/order';
import type { Stored } from '@/shared/schemas/stored';
import { eraseCustomer } from './eraseCustomer';
import { erasedEntry } from './erasedEntry';
import { erasedJob, erasedOrder } from './erasedOrder';
import { personalTexts } from './personalTexts';
import { type Rewrite, rewritten, takingOut, touchedTexts } from './withoutTexts';

/** What there is, tombstones included: what was removed still holds names. */
interface ErasureFrom {
  readonly drafts: readonly Stored[];
  readonly papers: readonly Paper[];
  readonly entries: readonly Entry[];
}

/** A text in which the customer may be named. */
export interface StillNamed {
  /** In a draft or an entry of the customer's own, or in a draft of others. */
  readonly where: 'ownDraft' | 'ownEntry' | 'elsewhere';
  /** Of the draft or entry in which it stands. */
  readonly kind: string;
  readonly id: string;
  /** Where in it, as in `openItems.what`. */
  readonly path: string;
  readonly text: string;
}

/** What an erasure changes, and what it leaves. */
export interface Erasure {
  /** Drafts with a body in which nothing personal of the customer is left. */
  readonly drafts: readonly Stored[];
  readonly entries: readonly Entry[];
  /** Papers that went out to the customer: they stay as they went, names and all. */
  readonly papersKept: readonly Paper[];
  /**
   * Where the customer may still be named, as it stands after the erasure: the name or contact in drafts of others, and
   * first names or surnames alone in what is its own. Only the maker can tell who is meant there.
   */
  readonly stillNamed: readonly StillNamed[];
  /** Takes the customer's names out of any other text that is kept, such as what undo says. */
  readonly rewrite: Rewrite;
}

/**
 * Works out what it takes to erase a customer who asks for it.
 *
 * @param day YYYY-MM-DD
 * @returns null where there is no such customer
 */
export function planErasure(customerId: string, from: ErasureFrom, day: string): Erasure | null {
  const customer = from.drafts.find(({ id }) => id === customerId);
  const known = customerSchema.safeParse(customer?.body);
  if (customer === undefined || customer.kind !== 'customer' || !known.success) return null;
  const orders = ordersOf(customerId, from.drafts);
  const ids = ownIds(customerId, orders, from.drafts);
  const texts = personalTexts(
    known.data,
    orders.map(({ order }) => order),
  );
  const looksFor = takingOut(texts.ofCustomer);
  const rewrite = takingOut(texts.all);
  const after = (draft: Stored): unknown => {
    if (draft.id === customerId) return eraseCustomer(day);
    // A blank may be called like the name on a piece; by the customer it is called on purpose.
    return ids.has(draft.id) ? erasedBody(draft, draft.kind === 'blank' ? looksFor : rewrite) : draft.body;
  };
  const all = from.drafts.map((draft) => ({ ...draft, body: after(draft) }));
  const drafts = all.filter(({ body }, index) => !sameValue(body, from.drafts[index]?.body));
  const papersKept = from.papers.filter(({ about }) => ids.has(about.id));
  const things = new Set([...ids, ...papersKept.map(({ id }) => id)]);
  const own = from.entries
    .filter(({ body }) => namesAny(body, things))
    .map((entry) => ({ entry, erased: erasedEntry(entry, rewrite) }));
  const entries = own.flatMap(({ entry, erased }) => (sameValue(erased, entry) ? [] : [erased]));
  const looksForWords = takingOut([...texts.all, ...texts.words]);
  const stillNamed = [
    ...all
      .filter(({ id, deletedAt }) => deletedAt === undefined && id !== customerId)
      .flatMap((draft) =>
        ids.has(draft.id)
          ? touchedIn('ownDraft', draft, looksForWords)
          : touchedIn('elsewhere', draft, looksFor),
      ),
    ...own.flatMap(({ erased }) => touchedIn('ownEntry', erased, looksForWords)),
  ];
  return { drafts, entries, papersKept, stillNamed, rewrite };
}

// Helpers

interface OrderOf {
  readonly id: string;
  readonly order: Order;
}

const ordersOf = (customerId: string, drafts: readonly Stored[]): readonly OrderOf[] =>
  drafts.flatMap(({ id, kind, body }) => {
    // Read whole only where it is of this customer: a large workshop has hundreds of others.
    if (kind !== 'order' || !isPlainObject(body) || body.customerId !== customerId) return [];
    const order = orderSchema.safeParse(body);
    return order.success ? [{ id, order: order.data }] : [];
  });

/** The customer, its orders, their jobs, and what only these jobs are made of. */
function ownIds(
  customerId: string,
  orders: readonly OrderOf[],
  drafts: readonly Stored[],
): ReadonlySet<string> {
  const jobIds = new Set(orders.flatMap(({ order }) => order.jobIds));
  const jobs = drafts.filter(({ kind }) => kind === 'job');
  const own = jobs.flatMap(({ id, body }) => {
    const job = jobIds.has(id) ? jobSchema.safeParse(body) : null;
    return job?.success ? partsOf(job.data) : [];
  });
  const shared = idsNamed(
    jobs.flatMap(({ id, body }) => (jobIds.has(id) ? [] : [body])),
    new Set(own),
  );
  return new Set([
    customerId,
    ...orders.map(({ id }) => id),
    ...jobIds,
    ...own.filter((id) => !shared.has(id)),
  ]);
}

const partsOf = ({ lines }: Job): readonly string[] =>
  lines.flatMap(({ blankId, placements }) => [blankId, ...placements.map(({ artworkId }) => artworkId)]);

function erasedBody({ kind, body }: Stored, rewrite: Rewrite): unknown {
  const order = kind === 'order' ? orderSchema.safeParse(body) : null;
  if (order?.success) return rewritten(kind, erasedOrder(order.data), rewrite);
  const job = kind === 'job' ? jobSchema.safeParse(body) : null;
  return rewritten(kind, job?.success ? erasedJob(job.data) : body, rewrite);
}

const touchedIn = (
  where: StillNamed['where'],
  { kind, id, body }: Pick<Stored, 'kind' | 'id' | 'body'>,
  rewrite: Rewrite,
): readonly StillNamed[] => touchedTexts(kind, body, rewrite).map((place) => ({ where, kind, id, ...place }));

/** @returns those of some ids that stand anywhere in a JSON value */
function idsNamed(value: unknown, ids: ReadonlySet<string>): ReadonlySet<string> {
  const found = new Set<string>();
  const look = (part: unknown): void => {
    if (typeof part === 'string') {
      if (ids.has(part)) found.add(part);
    } else if (Array.isArray(part)) part.forEach(look);
    else if (isPlainObject(part)) Object.values(part).forEach(look);
  };
  if (ids.size > 0) look(value);
  return found;
}

/** Entries name what they are about by its id, wherever it stands in them. */
function namesAny(value: unknown, ids: ReadonlySet<string>): boolean {
  if (typeof value === 'string') return ids.has(value);
  if (Array.isArray(value)) return value.some((item) => namesAny(item, ids));
  return isPlainObject(value) && Object.values(value).some((part) => namesAny(part, ids));
}
