import type { Job } from '@/shared/schemas/job';
import type { Order } from '@/shared/schemas/order';

/**
 * @returns an order without what was typed of its people; sizes, numbers of pieces and money stay, since the workshop
 * reckons with them
 */
export const erasedOrder = (order: Order): Order => ({
  ...order,
  personId: null,
  heardFrom: '',
  asked: '',
  lines: order.lines.map((line) => ({
    ...line,
    names: line.names.map((row) => ({ ...row, name: '', number: '' })),
  })),
  discount: order.discount === null ? null : { ...order.discount, why: '' },
  delivery: { ...order.delivery, addressId: null },
  agreed: '',
  attachments: [],
  note: '',
});

/** @returns a job of such an order: whose it is, and the names on its pieces, go. */
export const erasedJob = (job: Job): Job => ({
  ...job,
  customer: '',
  lines: job.lines.map((line) => ({ ...line, nameList: '' })),
});
