import type { Customer, Person } from '@/shared/schemas/customer';
import type { Order } from '@/shared/schemas/order';

/** Who stands behind an order. */
interface Contact {
  readonly customer: Customer | null;
  readonly person: Person | null;
  /** Whom to write to, as rows name them. */
  readonly who: string;
}

/** @param customers all, by their ids */
export function contactOf(
  { customerId, personId }: Pick<Order, 'customerId' | 'personId'>,
  customers: Readonly<Record<string, Customer>>,
): Contact {
  const customer = customers[customerId ?? ''] ?? null;
  const people = customer?.people ?? [];
  const person = people.find(({ id }) => id === personId) ?? people[0] ?? null;
  return { customer, person, who: firstName(person?.name) ?? customer?.name ?? 'the customer' };
}

// Helpers

const firstName = (name: string | undefined): string | undefined => name?.trim().split(/\s+/)[0];
