import { freeName } from '@/lib/drafts/freeName';
import type { OrderFacts } from '@/lib/orders/orderFacts';
import type { OrderStanding } from '@/lib/orders/orderStanding';
import { mixedPrices } from '@/lib/quotes/agreed/mixedPrices';
import type { Job } from '@/shared/schemas/job';
import type { Order, OrderCharge } from '@/shared/schemas/order';
import type { Workshop } from '@/shared/schemas/workshop';
import { freeOnRepeat, type RepeatedJob, repeatedJob } from './repeatedJob';

interface RepeatSource {
  readonly facts: Pick<OrderFacts, 'orderId' | 'order' | 'artworks'>;
  readonly standing: Pick<OrderStanding, 'artworks' | 'agreed' | 'lastQuote' | 'steps'>;
  /** The jobs of the order that are there, by id. */
  readonly jobs: Readonly<Record<string, Job>>;
  readonly workshop: Pick<Workshop, 'channels' | 'currency'>;
  readonly today: string;
  /** Gives a new id each time. */
  readonly makeId: () => string;
  readonly orderNames: readonly string[];
  readonly jobNames: readonly string[];
}

interface RepeatedOrder {
  readonly order: Order;
  readonly jobs: readonly (RepeatedJob & { readonly id: string; readonly repeats: string })[];
  /** Jobs of the order that are gone. */
  readonly missingJobs: readonly string[];
  /** Charged then and free now. */
  readonly freeCharges: readonly OrderCharge[];
  /** Agreed for one order alone, so the next one does not bear it. */
  readonly leftOut: {
    readonly discount: boolean;
    readonly agreed: boolean;
    readonly names: number;
    readonly fromLists: number;
    readonly waivers: number;
    readonly otherCharges: readonly OrderCharge[];
  };
}

/** Of a design made already; a sample stood for what nobody had seen, a change for one order, haste for one day. */
const freeKinds: readonly OrderCharge['kind'][] = ['design', 'sample'];
const onceKinds: readonly OrderCharge['kind'][] = ['change', 'rush'];

/** An order made after another: what is made already is free, the rest is priced by the rates of today. */
export function repeatOrder(source: RepeatSource): RepeatedOrder {
  const { facts, standing, jobs, today, makeId, orderNames, jobNames } = source;
  const { order, orderId } = facts;
  const free = freeOnRepeat(standing);
  const mixed = mixedIn(source);
  const taken = [...jobNames];
  const copies = order.jobIds.flatMap((repeats) => {
    const job = Object.hasOwn(jobs, repeats) ? jobs[repeats] : undefined;
    if (job === undefined) return [];
    const repeated = repeatedJob(job, { free, today, taken, mixed: mixed(repeats) });
    taken.push(repeated.job.name);
    return [{ ...repeated, id: makeId(), repeats }];
  });
  const idOf = new Map(copies.map(({ id, repeats }) => [repeats, id]));
  const isOf = (kinds: readonly OrderCharge['kind'][]) =>
    order.charges.filter(({ kind }) => kinds.includes(kind));
  return {
    order: {
      ...order,
      name: freeName(order.name, orderNames),
      heardFrom: '',
      asked: '',
      askedPieces: null,
      wantedOn: null,
      openItems: [],
      jobIds: copies.map(({ id }) => id),
      // Names are of those who wore the last ones, and a version of a list may be of old prices.
      lines: order.lines.flatMap((line) => {
        const id = idOf.get(line.jobId);
        return id === undefined ? [] : [{ ...line, jobId: id, price: { from: 'job' as const }, names: [] }];
      }),
      charges: order.charges.filter(({ kind }) => !freeKinds.includes(kind) && !onceKinds.includes(kind)),
      discount: null,
      leadDays: null,
      agreed: '',
      alternatives: [],
      underCostWhy: '',
      repeats: orderId,
      attachments: order.attachments.filter(
        ({ purpose }) => purpose === 'permission' || purpose === 'exemption',
      ),
      note: '',
      archivedOn: null,
    },
    jobs: copies,
    missingJobs: order.jobIds.filter((id) => !idOf.has(id)),
    freeCharges: isOf(freeKinds),
    leftOut: {
      discount: order.discount !== null,
      agreed: order.agreed !== '',
      names: order.lines.reduce((sum, { names }) => sum + names.length, 0),
      fromLists: order.lines.filter(({ price }) => price.from === 'list').length,
      waivers: copies.reduce((sum, { waivers }) => sum + waivers, 0),
      otherCharges: isOf(onceKinds),
    },
  };
}

// Helpers

/** @returns the lines of a job that were sold at prices which no job can ask. */
function mixedIn({
  facts: { order },
  standing: { agreed },
  jobs,
  workshop,
}: RepeatSource): (jobId: string) => readonly string[] {
  const mixed =
    agreed === null
      ? []
      : mixedPrices({
          ...{ quote: agreed.quote.body, alternativeId: agreed.alternativeId, order, workshop },
          jobs: Object.entries(jobs).map(([jobId, job]) => ({ jobId, job })),
        });
  return (jobId) => mixed.flatMap((one) => (one.jobId === jobId ? [one.lineId] : []));
}
