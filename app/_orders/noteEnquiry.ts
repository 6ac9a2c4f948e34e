import { newId } from '@/app/_documents/newId';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { freeName } from '@/lib/drafts/freeName';
import { foldedText } from '@/lib/drafts/jobSearch';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import { likelyNumber } from '@/lib/orders/likelyNumber';
import type { repeatOrder } from '@/lib/orders/repeat/repeatOrder';
import type { Edit } from '@/lib/stored/prepareEdit';
import { customerSchema } from '@/shared/schemas/customer';
import { orderSchema } from '@/shared/schemas/order';
import { type EnquiryDraft, enquiryName } from './enquiryDraft';

/** Customers by a name; those whose name was erased on request have none. */
export function customersCalled(
  name: string,
  { customers, orders }: Pick<ReadyWorkspace, 'customers' | 'orders'>,
): readonly string[] {
  const wanted = foldedText(name);
  if (wanted === '') return [];
  const found = Object.entries(customers).flatMap(([id, customer]) =>
    customer.erasedOn === null && foldedText(customer.name) === wanted ? [id] : [],
  );
  // Who ordered last comes first.
  const turn = orders.flatMap(({ order }) => (order.customerId === null ? [] : [order.customerId]));
  const placeOf = (id: string) => (turn.includes(id) ? turn.indexOf(id) : turn.length);
  return found.toSorted((one, other) => placeOf(one) - placeOf(other));
}

/**
 * Notes an enquiry as one step to undo: the customer where they are new, the order, and the entry that numbers it.
 *
 * @param id of the order; whatever is made of one thing is one order on all devices where it is made of that thing's id
 * @returns the id of the order; null where the store took nothing
 */
export function noteEnquiry(
  workspace: ReadyWorkspace,
  draft: EnquiryDraft,
  askedPieces: number | null,
  today: string,
  id: string = newId(),
): string | null {
  const [known] = customersCalled(draft.who, workspace);
  const who = draft.who.trim();
  const newCustomer = known === undefined && who !== '' ? newId() : null;
  const name = freeName(
    enquiryName(draft),
    workspace.orders.map(({ order }) => order.name),
  );
  const { what, wantedOn, heardFrom } = draft;
  const order = orderSchema.parse({
    ...{ name, askedPieces, wantedOn },
    customerId: known ?? newCustomer,
    heardFrom: heardFrom.trim(),
    asked: what.trim(),
  });
  const isTaken = noteOrder(workspace, `Enquiry of ${name}`, id, today, [
    ...(newCustomer === null
      ? []
      : [
          {
            do: 'add' as const,
            kind: 'customer' as const,
            id: newCustomer,
            body: customerSchema.parse({ name: who }),
          },
        ]),
    { do: 'add', kind: 'order', id, body: order },
  ]);
  return isTaken ? id : null;
}

/** Brings back an enquiry that was removed or undone, and numbers it where undoing took its number too. */
export function bringBackEnquiry(workspace: ReadyWorkspace, id: string, label: string, today: string): void {
  const isNumbered = workspace.entries.orderEvent.some(
    ({ body }) => body.orderId === id && body.step.what === 'enquired',
  );
  const back = [{ do: 'restore', kind: 'order', id } as const];
  if (isNumbered) workspace.edit(label, back);
  else noteOrder(workspace, label, id, today, back);
}

/** Adds a repeated order with its jobs as one step to undo. */
export function noteRepeat(
  workspace: ReadyWorkspace,
  id: string,
  { order, jobs }: ReturnType<typeof repeatOrder>,
  today: string,
): boolean {
  return noteOrder(workspace, `Repeat as ${order.name}`, id, today, [
    ...jobs.map((one) => ({ do: 'add' as const, kind: 'job' as const, id: one.id, body: one.job })),
    { do: 'add', kind: 'order', id, body: order },
  ]);
}

// Helpers

/** The write gives the number that counts; what is noted here shows until then. */
function noteOrder(
  { note, entries, device }: ReadyWorkspace,
  label: string,
  orderId: string,
  day: string,
  edits: readonly Edit<DocumentBodies>[],
): boolean {
  const number = likelyNumber(entries.orderEvent, device?.letter ?? null, Number(day.slice(0, 4)));
  const outcome = note(
    label,
    [{ kind: 'orderEvent', body: { orderId, day, step: { what: 'enquired', number } } }],
    edits,
  );
  return outcome.state === 'shown';
}
