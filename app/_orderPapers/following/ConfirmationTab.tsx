import { PaperDesk } from '@/app/_orderPapers/issuing/PaperDesk';
import { TabHead } from '@/app/_orderPapers/TabHead';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { confirmationAnswer, notAgreedWords } from '@/app/_words/orders/papers/followingWords';
import { agreedPaper } from './agreedPaper';
import type { FollowingTabProps } from './paperChoices';

/** What was accepted, said back to the customer. */
export function ConfirmationTab({ of, isNext }: FollowingTabProps) {
  const { standing, locale, today } = of;
  const agreed = agreedPaper(of, { number: UNNUMBERED, day: today });
  return (
    <>
      <TabHead
        answer={
          agreed === null
            ? null
            : confirmationAnswer(
                agreed.accepted.by,
                minorMoney(agreed.sums.total, agreed.currency, locale),
                agreed.accepted.choice,
              )
        }
      />
      <PaperDesk
        {...{ of, isNext }}
        kind="confirmation"
        paper={agreed === null ? null : { kind: 'confirmation', bodyOf: (number) => ({ ...agreed, number }) }}
        blockedBy={notAgreedWords(standing.isQuoteMissing)}
      />
    </>
  );
}

/** Stands until the paper has its own. */
const UNNUMBERED = { count: 1, letter: null } as const;
