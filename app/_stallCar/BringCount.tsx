'use client';

import { Advice } from '@/app/_controls/Advice';
import { Arrived } from '@/app/_copies/Arrived';
import { BringIn } from '@/app/_copies/BringIn';
import { useArriving } from '@/app/_copies/useArriving';
import { useCopyStore } from '@/app/_copies/useCopyStore';
import { useMakingCopy } from '@/app/_copies/useMakingCopy';
import { carWords, otherDayWords } from '@/app/_words/stall/carWords';
import type { StallPart } from './carOnScreen';
import { otherDay } from './otherDay';

/** The count that comes back from a phone: by the same way in as everything, and told where it is of another day. */
export function BringCount({ part }: Readonly<{ part: Pick<StallPart, 'workspace' | 'id' | 'stallDay'> }>) {
  const { workspace, id, stallDay } = part;
  const store = useCopyStore(workspace);
  const { makeFirst } = useMakingCopy(store);
  const arriving = useArriving({ ...store, saveFirst: makeFirst });
  const { state } = arriving;
  const other = state.kind === 'looked' ? otherDay(state.look.plan, id) : null;
  return (
    <>
      <BringIn arriving={arriving} button={carWords.bring} />
      {other !== null && <Advice severity="caution">{otherDayWords(other, stallDay.name)}</Advice>}
      <Arrived arriving={arriving} level={3} />
    </>
  );
}
