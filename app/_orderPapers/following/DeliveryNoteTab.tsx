import { PaperDesk } from '@/app/_orderPapers/issuing/PaperDesk';
import { TabHead } from '@/app/_orderPapers/TabHead';
import { deliveryAnswer, goodsProblemWords } from '@/app/_words/orders/followingWords';
import { deliveryNoteOf } from '@/lib/quotes/goodsPapers';
import type { FollowingTabProps } from './paperChoices';

/** What goes out, for whoever packs it and whoever gets it. */
export function DeliveryNoteTab({ of, isNext }: FollowingTabProps) {
  const { formatter, today, goods } = of;
  const made = deliveryNoteOf(goods, { number: { count: 1, letter: null }, day: today });
  const note = made.ok ? made.value : null;
  const pieces =
    note?.goods.flatMap(({ sizes }) => sizes).reduce((sum, { quantity }) => sum + quantity, 0) ?? 0;
  return (
    <>
      <TabHead
        answer={note === null ? null : deliveryAnswer(formatter.count(pieces, 'piece'), note.people.length)}
      />
      <PaperDesk
        {...{ of, isNext }}
        kind="deliveryNote"
        paper={note === null ? null : { kind: 'deliveryNote', bodyOf: (number) => ({ ...note, number }) }}
        blockedBy={made.ok ? undefined : goodsProblemWords(made.problem)}
      />
    </>
  );
}
