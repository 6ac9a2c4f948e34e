import { DateField } from '@/app/_fields/DateField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { PaperDesk } from '@/app/_orderPapers/issuing/PaperDesk';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { TabHead } from '@/app/_orderPapers/TabHead';
import { minorMoney } from '@/app/_words/orders/minorWords';
import {
  givenBackWords,
  invoiceAnswer,
  invoiceInForceWords,
  notAgreedWords,
} from '@/app/_words/orders/papers/followingWords';
import { billsOf, isAsking } from '@/lib/orders/bills';
import { toBill } from '@/lib/orders/toBill';
import { asName } from '@/lib/quotes/asName';
import { changesInvoiceOf, invoiceOf } from '@/lib/quotes/following/invoiceOf';
import { addDays } from '@/shared/days';
import { seriesNumberText } from '@/shared/orderNumberText';
import type { Invoice } from '@/shared/schemas/orderPapers';
import { agreedPaper } from './agreedPaper';
import type { FollowingTabProps } from './paperChoices';

/** The bill of what was agreed and what was changed since; of changes alone where the goods are billed. */
export function InvoiceTab({ of, isNext, choices, onChoose }: FollowingTabProps) {
  const { standing, facts, locale, today } = of;
  const { money } = standing;
  const { creditDays } = facts.habits;
  const usualDue = creditDays === null ? null : addDays(today, creditDays);
  const dueOn = choices.invoiceDueOn === undefined ? usualDue : choices.invoiceDueOn;
  const suppliedOn = choices.suppliedOn === undefined ? deliveredOn(of) : choices.suppliedOn;
  const invoice = invoiceToGo(of, { suppliedOn, dueOn });
  const inForce = billsOf(facts.happened).filter(isAsking);
  const again = toBill(facts.happened, standing).givenBack.map(({ wish }) => asName(wish));
  const words = (minor: number) => minorMoney(minor, money.currency, locale);
  return (
    <>
      <TabHead
        answer={
          invoice === null
            ? null
            : invoiceAnswer(
                { total: invoice.sums.total, due: invoice.due, isOfGoods: invoice.goods.length > 0 },
                words,
              )
        }
      >
        {invoice?.goods.length === 0 && again.length > 0 && (
          <p className={styles.quiet}>{givenBackWords(again)}</p>
        )}
        <FieldGroup>
          <DateField
            label="Supplied on"
            value={suppliedOn}
            onCommit={(day) => onChoose({ suppliedOn: day })}
          />
          <DateField
            label="To be paid by"
            value={dueOn}
            caution={dueOn !== null && dueOn < today ? 'This day is past.' : undefined}
            hint="Nothing here means: before the goods go out."
            onCommit={(day) => onChoose({ invoiceDueOn: day })}
          />
        </FieldGroup>
      </TabHead>
      <PaperDesk
        {...{ of, isNext }}
        kind="invoice"
        paper={invoice === null ? null : { kind: 'invoice', bodyOf: (number) => ({ ...invoice, number }) }}
        blockedBy={
          inForce.length === 0
            ? notAgreedWords(standing.isQuoteMissing)
            : invoiceInForceWords(
                inForce.map(({ paper }) => seriesNumberText(paper.number, paper.body.issuedOn)),
              )
        }
      />
    </>
  );
}

// Helpers

/** @returns what an invoice can be of now; null where nothing was agreed, or all of it is billed. */
function invoiceToGo(
  of: OrderOnPaper,
  days: { readonly suppliedOn: string | null; readonly dueOn: string | null },
): Invoice | null {
  const { standing, facts, today } = of;
  const issued = { number: { count: 1, letter: null }, day: today };
  const agreed = agreedPaper(of, issued);
  const terms = standing.agreed?.quote.body.owner.terms;
  if (agreed === null || terms === undefined) return null;
  const { isOfGoods, changes, earlierMinor } = toBill(facts.happened, standing);
  const billing = {
    ...{ ...days, terms, earlier: earlierMinor, paid: standing.money.receivedMinor },
    changes: changes.map(({ entryId, wish, amountMinor }) => ({
      ...{ entryId, what: asName(wish), amount: amountMinor },
    })),
  };
  if (isOfGoods) return invoiceOf(agreed, billing, issued);
  return changes.length === 0 ? null : changesInvoiceOf(agreed, billing, issued);
}

const deliveredOn = ({ standing }: OrderOnPaper): string | null =>
  standing.steps.findLast(({ step, holdsSince }) => step.what === 'delivered' && holdsSince !== null)?.day ??
  null;
