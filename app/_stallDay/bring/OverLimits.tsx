import { Advice } from '@/app/_controls/Advice';
import type { StallOnScreen, StallPlan } from '@/app/_stallDay/stallOnScreen';
import { limitGapWords, nothingFitsWords, overWords } from '@/app/_words/stall/offerWords';

type OverLimitsProps = Readonly<{ plan: StallPlan; on: StallOnScreen }>;

/** What the maker’s numbers take more of than there is, and how far from the best the advice within the limits may be. */
export function OverLimits({ plan: { mine, limitGap, nothingFits }, on }: OverLimitsProps) {
  const gap = limitGapWords(limitGap, on.amount);
  return (
    <>
      {nothingFits !== null && (
        <Advice severity="caution">{nothingFitsWords(nothingFits, on.amount, on.formatter)}</Advice>
      )}
      {mine.over.map((one) => (
        <Advice key={one.limit} severity="caution">
          {overWords(one, on.amount, on)}
        </Advice>
      ))}
      {gap !== null && <Advice severity="note">{gap}</Advice>}
    </>
  );
}
