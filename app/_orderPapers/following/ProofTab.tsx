import { DateField } from '@/app/_fields/DateField';
import { PaperDesk } from '@/app/_orderPapers/issuing/PaperDesk';
import { TabHead } from '@/app/_orderPapers/TabHead';
import { goodsProblemWords, proofAnswer, revisionsWords } from '@/app/_words/orders/papers/followingWords';
import { proofOf } from '@/lib/quotes/following/goodsPapers';
import { MissingPictures } from './MissingPictures';
import type { FollowingTabProps } from './paperChoices';

/** What will be printed, to be approved. */
export function ProofTab({ of, isNext, choices, onChoose }: FollowingTabProps) {
  const { standing, today, goods } = of;
  const { used, included } = standing.revisions;
  const dates = standing.agreed?.quote.body.dates ?? standing.lastQuote?.body.dates;
  const usual = dates?.approveBy ?? null;
  const usualDay = usual === null || usual < today ? null : usual;
  const answerBy = choices.answerBy === undefined ? usualDay : choices.answerBy;
  const made = proofOf(
    goods,
    { revisionsUsed: used, answerBy },
    { number: { count: 1, letter: null }, day: today },
  );
  const proof = made.ok ? made.value : null;
  const prints = proof?.goods.reduce((sum, one) => sum + one.prints.length, 0) ?? 0;
  return (
    <>
      <TabHead
        answer={
          proof === null ? null : proofAnswer(prints, proof.names.length, revisionsWords(used, included))
        }
      >
        <DateField
          label="Answer by"
          value={answerBy}
          caution={answerBy !== null && answerBy < today ? 'This day is past.' : undefined}
          onCommit={(day) => onChoose({ answerBy: day })}
        />
      </TabHead>
      {proof !== null && <MissingPictures goods={proof.goods} />}
      <PaperDesk
        {...{ of, isNext }}
        kind="proof"
        paper={proof === null ? null : { kind: 'proof', bodyOf: (number) => ({ ...proof, number }) }}
        blockedBy={made.ok ? undefined : goodsProblemWords(made.problem)}
      />
    </>
  );
}
