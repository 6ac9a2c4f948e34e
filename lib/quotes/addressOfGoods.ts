import type { Customer } from '@/shared/schemas/customer';
import type { Order } from '@/shared/schemas/order';

/** @returns where goods of an order go: where somebody chose, else where no bills alone go; null of a customer without an address. */
export function addressOfGoods(
  { delivery }: Pick<Order, 'delivery'>,
  { addresses }: Pick<Customer, 'addresses'>,
): string | null {
  const found =
    addresses.find(({ id }) => id === delivery.addressId) ??
    addresses.find(({ purpose }) => purpose !== 'bills') ??
    addresses[0];
  return found?.text ?? null;
}
