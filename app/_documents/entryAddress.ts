import { approvalSchema, issuingSchema } from '@/shared/schemas/entries';
import type { Entry } from '@/shared/schemas/happened';
import { expenseSchema, orderEventSchema, paymentSchema, payoutSchema } from '@/shared/schemas/orderEvents';
import { stockCountSchema, stockMoveSchema } from '@/shared/schemas/stock';
import { documentAddress } from './documentAddress';
import type { JobRecord } from './documentsByKind';
import { blankFieldId } from './fieldAddress';
import type { Workspace } from './useWorkspace';

/**
 * The address of the place where an entry is seen.
 *
 * @returns null where what it is about is not here, or has no place yet
 */
export function entryAddress(
  { kind, body }: Pick<Entry, 'kind' | 'body'>,
  { jobs, papers, blanks }: Pick<Workspace, 'papers' | 'blanks'> & { readonly jobs: readonly JobRecord[] },
): string | null {
  switch (kind) {
    case 'goodsIn':
    case 'faultClaim':
      return '/making/suppliers';
    case 'inkRefill':
    case 'inkPrints':
      return '/workshop#ink-record';
    case 'stockMove':
    case 'stockCount': {
      const lying = (kind === 'stockMove' ? stockMoveSchema : stockCountSchema).safeParse(body);
      const item = lying.success ? lying.data.item : null;
      return item?.kind === 'blank' && Object.hasOwn(blanks, item.blankId)
        ? `/blanks#${blankFieldId(item.blankId, [])}`
        : null;
    }
    case 'approval': {
      const approval = approvalSchema.safeParse(body);
      return approval.success
        ? documentAddress({ kind: 'artwork', id: approval.data.artworkId, path: [] }, jobs)
        : null;
    }
    case 'orderEvent': {
      const event = orderEventSchema.safeParse(body);
      return event.success
        ? documentAddress({ kind: 'order', id: event.data.orderId, path: [] }, jobs)
        : null;
    }
    case 'payment':
    case 'payout': {
      const payment = (kind === 'payment' ? paymentSchema : payoutSchema).safeParse(body);
      return payment.success
        ? documentAddress({ kind: 'order', id: payment.data.orderId, path: [] }, jobs)
        : null;
    }
    case 'expense': {
      const expense = expenseSchema.safeParse(body);
      const id = expense.success ? expense.data.orderId : null;
      return id === null ? null : documentAddress({ kind: 'order', id, path: [] }, jobs);
    }
    case 'issuing': {
      const issuing = issuingSchema.safeParse(body);
      const id = issuing.success ? issuing.data.paperId : null;
      const paper = Object.values(papers)
        .flat()
        .find((one) => one.id === id);
      return paper === undefined ? null : documentAddress({ ...paper.about, path: [] }, jobs);
    }
    default:
      return null;
  }
}
