import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import type { Order } from '@/shared/schemas/order';

export interface OrderFields {
  readonly order: Order;
  /** Sets one field of the order; what other tabs set beside it stays. */
  readonly set: <Field extends keyof Order>(label: string, field: Field, value: Order[Field]) => void;
  /** Changes a list of the order, entry by entry. */
  readonly change: (label: string, to: (order: Order) => Order, key?: string) => void;
}

export const orderFields = ({
  workspace,
  orderId,
  order,
}: Pick<OrderOnPaper, 'workspace' | 'orderId' | 'order'>): OrderFields => ({
  order,
  set: (label, field, value) => {
    workspace.setField({ kind: 'order', id: orderId }, label, [field], value);
  },
  change: (label, to, key) => {
    workspace.changeOrder(orderId, label, to, key);
  },
});
