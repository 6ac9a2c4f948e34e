import { FindingRow } from '@/app/_controls/FindingRow';
import { PaperDesk } from '@/app/_orderPapers/issuing/PaperDesk';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import { TabHead } from '@/app/_orderPapers/TabHead';
import { deliveryAnswer, goodsProblemWords } from '@/app/_words/orders/papers/followingWords';
import { deliveryNoteOf } from '@/lib/quotes/following/goodsPapers';
import { namesOtherwise } from './namesOtherwise';
import type { FollowingTabProps } from './paperChoices';

/** What goes out, for whoever packs it and whoever gets it. */
export function DeliveryNoteTab({ of, isNext }: FollowingTabProps) {
  const { formatter, today, goods } = of;
  const made = deliveryNoteOf(goods, { number: { count: 1, letter: null }, day: today });
  const note = made.ok ? made.value : null;
  const pieces =
    note?.goods.flatMap(({ sizes }) => sizes).reduce((sum, { quantity }) => sum + quantity, 0) ?? 0;
  const otherwise = namesOtherwise(of);
  return (
    <>
      <TabHead
        answer={note === null ? null : deliveryAnswer(formatter.count(pieces, 'piece'), note.people.length)}
      >
        {note !== null && otherwise.length > 0 && (
          <ul className={styles.findings}>
            {otherwise.map((words) => (
              <FindingRow
                key={words}
                severity="caution"
                sentence={words}
                detail="The paper would say both, how many of each size and who gets which, and they do not agree."
              >
                <a href="#order-names">Go to the names</a>
              </FindingRow>
            ))}
          </ul>
        )}
      </TabHead>
      <PaperDesk
        {...{ of, isNext }}
        kind="deliveryNote"
        paper={note === null ? null : { kind: 'deliveryNote', bodyOf: (number) => ({ ...note, number }) }}
        blockedBy={made.ok ? undefined : goodsProblemWords(made.problem)}
      />
    </>
  );
}
