import { DateField } from '@/app/_fields/DateField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { PaperDesk } from '@/app/_orderPapers/issuing/PaperDesk';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { TabHead } from '@/app/_orderPapers/TabHead';
import { invoiceAnswer, invoiceInForceWords, notAgreedWords } from '@/app/_words/orders/followingWords';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { billsOf, leftOf } from '@/lib/orders/bills';
import { invoiceOf } from '@/lib/quotes/invoiceOf';
import { addDays } from '@/shared/days';
import { seriesNumberText } from '@/shared/orderNumberText';
import { agreedPaper, changesOf } from './agreedPaper';
import type { FollowingTabProps } from './paperChoices';

/** The bill of what was agreed and what was changed since. */
export function InvoiceTab({ of, isNext, choices, onChoose }: FollowingTabProps) {
  const { standing, facts, locale, today } = of;
  const { money } = standing;
  const { creditDays } = facts.habits;
  const usualDue = creditDays === null ? null : addDays(today, creditDays);
  const dueOn = choices.invoiceDueOn === undefined ? usualDue : choices.invoiceDueOn;
  const suppliedOn = choices.suppliedOn === undefined ? deliveredOn(of) : choices.suppliedOn;
  const issued = { number: { count: 1, letter: null }, day: today };
  const agreed = agreedPaper(of, issued);
  const inForce = billsOf(facts.happened).findLast((bill) => leftOf(bill).subtotal > 0);
  const facing = { changes: changesOf(of), paid: money.receivedMinor, suppliedOn, dueOn };
  const terms = standing.agreed?.quote.body.owner.terms;
  const invoice =
    agreed === null || terms === undefined || inForce !== undefined
      ? null
      : invoiceOf(agreed, { ...facing, terms }, issued);
  const words = (minor: number) => minorMoney(minor, money.currency, locale);
  return (
    <>
      <TabHead
        answer={invoice === null ? null : invoiceAnswer(words(invoice.sums.total), words(invoice.due))}
      >
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
          inForce === undefined
            ? notAgreedWords(standing.isQuoteMissing)
            : invoiceInForceWords(seriesNumberText(inForce.paper.number, inForce.paper.body.issuedOn))
        }
      />
    </>
  );
}

// Helpers

const deliveredOn = ({ standing }: OrderOnPaper): string | null =>
  standing.steps.findLast(({ step, holdsSince }) => step.what === 'delivered' && holdsSince !== null)?.day ??
  null;
