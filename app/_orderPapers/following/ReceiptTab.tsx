import { ChoiceField } from '@/app/_fields/ChoiceField';
import { PaperDesk } from '@/app/_orderPapers/issuing/PaperDesk';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { TabHead } from '@/app/_orderPapers/TabHead';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { notAgreedWords, receiptAnswer } from '@/app/_words/orders/papers/followingWords';
import { cameMinor } from '@/lib/orders/money/payments';
import type { NotedOf } from '@/lib/orders/orderFacts';
import { receiptOf } from '@/lib/quotes/following/followingPapers';
import { owedPaper } from './agreedPaper';
import type { FollowingTabProps } from './paperChoices';

/** Says that money came. */
export function ReceiptTab({ of, isNext, choices, onChoose }: FollowingTabProps) {
  const { standing, locale, formatter, today } = of;
  const payments = paymentsOf(of);
  const receipted = new Set(
    of.facts.happened.flatMap((one) =>
      one.kind === 'receipt' && !one.withdrawn ? [one.body.payment.entryId] : [],
    ),
  );
  const chosen =
    payments.find(({ entry }) => entry.id === choices.paymentId) ??
    payments.findLast(({ entry }) => !receipted.has(entry.id)) ??
    payments.at(-1);
  const issued = { number: { count: 1, letter: null }, day: today };
  const owed = owedPaper(of, issued);
  const receipt =
    owed === null || chosen === undefined
      ? null
      : receiptOf(owed, { entryId: chosen.entry.id, payment: chosen.entry.body, paid: chosen.paid }, issued);
  const words = (minor: number) => minorMoney(minor, standing.money.currency, locale);
  return (
    <>
      <TabHead answer={receipt === null ? null : receiptAnswer(receipt.payment.amount, receipt.left, words)}>
        {payments.length > 1 && (
          <ChoiceField
            label="Which payment"
            value={chosen?.entry.id ?? null}
            choices={payments.map(({ entry }) => ({
              value: entry.id,
              label: `${formatter.day(entry.body.day)} · ${words(entry.body.amountMinor)}${
                receipted.has(entry.id) ? ' · has a receipt' : ''
              }`,
            }))}
            onCommit={(paymentId) => onChoose({ paymentId })}
          />
        )}
      </TabHead>
      <PaperDesk
        {...{ of, isNext }}
        kind="receipt"
        paper={receipt === null ? null : { kind: 'receipt', bodyOf: (number) => ({ ...receipt, number }) }}
        blockedBy={
          chosen === undefined
            ? 'No payment is noted yet. Note what came first.'
            : notAgreedWords(standing.isQuoteMissing)
        }
      />
    </>
  );
}

// Helpers

interface PaymentSoFar {
  readonly entry: NotedOf<'payment'>;
  /** What came in all up to it, less what went back. */
  readonly paid: number;
}

/** @returns what came in the money of the order, each with all that came up to it. */
function paymentsOf({ facts, standing }: Pick<OrderOnPaper, 'facts' | 'standing'>): readonly PaymentSoFar[] {
  const found: PaymentSoFar[] = [];
  let paid = 0;
  for (const entry of facts.happened) {
    if (entry.kind !== 'payment' || entry.body.currency !== standing.money.currency) continue;
    paid += cameMinor(entry.body);
    if (entry.body.kind === 'payment') found.push({ entry, paid });
  }
  return found;
}
