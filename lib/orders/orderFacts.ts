import type { OrderPaperKind } from '@/lib/kinds/paperFacts';
import type { PaperBodies } from '@/lib/kinds/paperKinds';
import type { Approval } from '@/shared/schemas/entries';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Order } from '@/shared/schemas/order';
import type { Expense, OrderEvent, Payment, Payout } from '@/shared/schemas/orderEvents';
import type { StockMove } from '@/shared/schemas/stock';

type OfKind<Bodies, Kind extends keyof Bodies & string> = Entry<Kind, Bodies[Kind]>;
interface NotedBodies {
  readonly orderEvent: OrderEvent;
  readonly payment: Payment;
  readonly payout: Payout;
  readonly expense: Expense;
  readonly stockMove: StockMove;
  readonly approval: Approval;
}
export type NotedOf<Kind extends keyof NotedBodies> = OfKind<NotedBodies, Kind>;
/** What counts, of any kind an order is told by. */
export type Noted = { [Kind in keyof NotedBodies]: NotedOf<Kind> }[keyof NotedBodies];

export type OutOf<Kind extends OrderPaperKind> = Paper<Kind, PaperBodies[Kind]> & {
  readonly withdrawn: boolean;
};
/** A paper of an order that went out, withdrawn ones among them. */
export type OrderPaper = { [Kind in OrderPaperKind]: OutOf<Kind> }[OrderPaperKind];

export type Happening = Noted | OrderPaper;

/** A version of an artwork. */
export interface ArtworkVersion {
  readonly artworkId: string;
  readonly version: number;
}

/** What one order is told by. */
export interface OrderFacts {
  readonly orderId: string;
  readonly order: Order;
  /** Entries in force and papers, in the one order that all devices agree on. */
  readonly happened: readonly Happening[];
  /** What its jobs print, as it is now. */
  readonly artworks: readonly ArtworkVersion[];
  readonly habits: OrderHabits;
}

/** What of the workshop decides where an order says nothing else. */
export interface OrderHabits {
  readonly currency: string;
  readonly revisionsIncluded: number;
  /** Days after the invoice; null where it is paid before the goods go out. */
  readonly creditDays: number | null;
  /** The maker's calendar day of a moment, for entries that bear none. */
  readonly dayOf: (at: number) => string;
}

interface EverythingNoted {
  readonly orders: Readonly<Record<string, Order>>;
  /** The artworks that each job prints. */
  readonly artworksOfJob: (jobId: string) => readonly ArtworkVersion[];
  /** Entries in force and papers in the one order of everything noted, which only the store knows. */
  readonly happened: readonly Happening[];
  readonly habits: OrderHabits;
}

/**
 * Sorts what happened by order, once for all of them. Nothing is put in another order here: what was taken back, or is
 * of another kind, tells how late the clock of a device already was.
 *
 * @param before as they were sorted last: an order of which nothing changed stays the same object
 */
export function orderFacts(
  { orders, artworksOfJob, happened: all, habits }: EverythingNoted,
  before: ReadonlyMap<string, OrderFacts> = new Map(),
): ReadonlyMap<string, OrderFacts> {
  const orderOfJob = new Map(
    Object.entries(orders).flatMap(([id, { jobIds }]) => jobIds.map((jobId) => [jobId, id] as const)),
  );
  const artworks = new Map(
    Object.entries(orders).map(
      ([id, { jobIds }]) => [id, newestOfEach(jobIds.flatMap(artworksOfJob))] as const,
    ),
  );
  const ordersOfArtwork = new Map<string, Set<string>>();
  for (const [id, printed] of [...artworks, ...all.map(versionsNamed)]) {
    for (const { artworkId } of printed) {
      const known = ordersOfArtwork.get(artworkId);
      if (known === undefined) ordersOfArtwork.set(artworkId, new Set([id]));
      else known.add(id);
    }
  }
  const ofOrder = (one: Happening): readonly (string | null)[] => {
    if (one.kind === 'approval') return [...(ordersOfArtwork.get(one.body.artworkId) ?? [])];
    if (one.kind !== 'stockMove') return [one.body.orderId];
    const { reference } = one.body;
    if (reference?.kind === 'order') return [reference.id];
    return reference?.kind === 'job' ? [orderOfJob.get(reference.id) ?? null] : [];
  };
  const happened = new Map<string, Happening[]>();
  for (const one of all) {
    for (const id of ofOrder(one)) {
      if (id === null) continue;
      const list = happened.get(id);
      if (list === undefined) happened.set(id, [one]);
      else list.push(one);
    }
  }
  return new Map(
    Object.entries(orders).map(([orderId, order]) => {
      const [own, printed] = [happened.get(orderId) ?? [], artworks.get(orderId) ?? []];
      const known = before.get(orderId);
      const isSame =
        known?.order === order &&
        known.habits === habits &&
        isSameList(known.happened, own, (one, other) => one === other) &&
        isSameList(
          known.artworks,
          printed,
          (one, other) => one.artworkId === other.artworkId && one.version === other.version,
        );
      return [orderId, isSame ? known : { orderId, order, happened: own, artworks: printed, habits }];
    }),
  );
}

/** Whether an order is told by it. */
export const isOfOrders = (one: { readonly kind: string }): one is Happening =>
  Object.hasOwn(kindsOfOrders, one.kind);

// Helpers

const kindsOfOrders: Readonly<Record<Happening['kind'], true>> = {
  ...{ orderEvent: true, payment: true, payout: true, expense: true, stockMove: true, approval: true },
  ...{ quote: true, confirmation: true, proof: true, paymentRequest: true, invoice: true, receipt: true },
  ...{ creditNote: true, deliveryNote: true },
};

/** A step keeps the yes to the pictures it names, whatever its job prints later. */
function versionsNamed(one: Happening): readonly [string, readonly ArtworkVersion[]] {
  if (one.kind !== 'orderEvent') return ['', []];
  const { orderId, step } = one.body;
  return [orderId, ('versions' in step ? step.versions : undefined) ?? []];
}

const isSameList = <Of>(
  list: readonly Of[],
  other: readonly Of[],
  isSame: (one: Of, other: Of) => boolean,
): boolean =>
  list.length === other.length &&
  list.every((one, at) => {
    const two = other[at];
    return two !== undefined && isSame(one, two);
  });

const newestOfEach = (versions: readonly ArtworkVersion[]): readonly ArtworkVersion[] => [
  ...new Map(versions.map((one) => [one.artworkId, one])).values(),
];
