import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { PaperDesk } from '@/app/_orderPapers/issuing/PaperDesk';
import { TabHead } from '@/app/_orderPapers/TabHead';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { notAgreedWords, requestAnswer } from '@/app/_words/orders/papers/followingWords';
import { paymentRequestOf } from '@/lib/quotes/following/followingPapers';
import { owedPaper } from './agreedPaper';
import type { FollowingTabProps } from './paperChoices';

/** Asks for the deposit or the balance. */
export function RequestTab({ of, isNext, choices, onChoose }: FollowingTabProps) {
  const { standing, locale, today } = of;
  const { money } = standing;
  const what = choices.requestOf ?? ((money.depositOpenMinor ?? 0) > 0 ? 'deposit' : 'balance');
  const usualDue = what === 'deposit' ? money.due.depositOn : money.due.balanceOn;
  const dueOn = choices.requestDueOn === undefined ? pastAsNone(usualDue, today) : choices.requestDueOn;
  const paid = money.receivedMinor;
  const bodyFor = (number: { count: number; letter: string | null }) => {
    const issued = { number, day: today };
    const owed = owedPaper(of, issued);
    return owed === null ? null : paymentRequestOf(owed, { what, paid, dueOn }, issued);
  };
  const made = bodyFor({ count: 1, letter: null });
  const request = made?.ok ? made.value : null;
  const words = (minor: number) => minorMoney(minor, money.currency, locale);
  return (
    <>
      <TabHead
        answer={
          request === null
            ? null
            : requestAnswer(words(request.amount), what, paid === 0 ? null : words(paid))
        }
      >
        <FieldGroup>
          <ChoiceField
            label="Asks for"
            value={what}
            choices={[
              { value: 'deposit', label: 'The deposit' },
              { value: 'balance', label: 'The balance' },
            ]}
            onCommit={(requestOf) => onChoose({ requestOf, requestDueOn: undefined })}
          />
          <DateField
            label="To be paid by"
            value={dueOn}
            caution={dueOn !== null && dueOn < today ? 'This day is past.' : undefined}
            onCommit={(requestDueOn) => onChoose({ requestDueOn })}
          />
        </FieldGroup>
      </TabHead>
      <PaperDesk
        {...{ of, isNext }}
        kind="paymentRequest"
        paper={
          request === null ? null : { kind: 'paymentRequest', bodyOf: (number) => ({ ...request, number }) }
        }
        blockedBy={
          made === null
            ? notAgreedWords(standing.isQuoteMissing)
            : `All of the ${what} has come: there is nothing to ask for.`
        }
      />
    </>
  );
}

// Helpers

/** Nobody is asked to pay by a day that is over, unless the maker says so. */
const pastAsNone = (day: string | null, today: string): string | null =>
  day === null || day < today ? null : day;
