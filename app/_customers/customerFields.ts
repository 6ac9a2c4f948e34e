import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Customer } from '@/shared/schemas/customer';
import type { FieldPath } from '@/shared/setIn';

/** What every part of a customer's screen is given. */
export interface CustomerFields {
  readonly workspace: ReadyWorkspace;
  readonly customerId: string;
  readonly customer: Customer;
  /** Sets one field; the label is what undo says. */
  readonly set: (label: string, path: FieldPath, value: unknown) => void;
}
