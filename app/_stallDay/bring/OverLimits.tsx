import { Advice } from '@/app/_controls/Advice';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { overWords } from '@/app/_words/stall/offerWords';
import type { StallPlanned } from '@/lib/stall/plan/stallPlanned';

type OverLimitsProps = Readonly<{ over: StallPlanned['over']; on: StallOnScreen }>;

/** What the maker's numbers take more of than there is. */
export const OverLimits = ({ over, on }: OverLimitsProps) => (
  <>
    {over.map((one) => (
      <Advice key={one.limit} severity="caution">
        {overWords(one, on.amount, on.formatter)}
      </Advice>
    ))}
  </>
);
