import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { z } from '@/shared/schemas/z';

/** What is chosen for papers that follow; kept while tabs change. What is typed of a credit note outlives the page. */
export interface PaperChoices {
  readonly requestOf: 'deposit' | 'balance' | null;
  /** Undefined where nobody has set a day or taken it away. */
  readonly requestDueOn: string | null | undefined;
  readonly invoiceDueOn: string | null | undefined;
  readonly suppliedOn: string | null | undefined;
  readonly answerBy: string | null | undefined;
  readonly paymentId: string | null;
  readonly invoiceId: string | null;
  readonly creditWhy: string;
  readonly creditLines: readonly CreditLine[];
}

const creditLineSchema = z.strictObject({ id: z.string(), what: z.string(), amount: z.number().nullable() });

/** A part of an invoice that is given back; currency units. */
export type CreditLine = Readonly<z.infer<typeof creditLineSchema>>;

/** What is typed of a credit note. */
export const creditSchema = z.strictObject({
  invoiceId: z.string().nullable(),
  creditWhy: z.string(),
  creditLines: z.array(creditLineSchema),
});

export const firstChoices: PaperChoices = {
  requestOf: null,
  requestDueOn: undefined,
  invoiceDueOn: undefined,
  suppliedOn: undefined,
  answerBy: undefined,
  paymentId: null,
  invoiceId: null,
  creditWhy: '',
  creditLines: [],
};

/** What each tab of a paper that follows is given. */
export type FollowingTabProps = Readonly<{
  of: OrderOnPaper;
  isNext: boolean;
  choices: PaperChoices;
  onChoose: (change: Partial<PaperChoices>) => void;
}>;
