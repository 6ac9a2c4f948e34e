import { type Customer, customerSchema } from '@/shared/schemas/customer';

/**
 * @param day YYYY-MM-DD
 * @returns what is left of a customer who asked to be erased: that there was one, so that its orders go on naming it
 */
export const eraseCustomer = (day: string): Customer =>
  customerSchema.parse({ name: `Erased on ${day}`, erasedOn: day });
