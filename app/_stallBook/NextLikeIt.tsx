'use client';

import { useRouter } from 'next/navigation';
import { Button } from '@/app/_controls/Button';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { closedNames } from '@/app/_words/stall/closedWords';
import type { StallDay } from '@/shared/schemas/stallDay';
import { planNext } from './planNext';

type NextLikeItProps = Readonly<{
  workspace: Pick<ReadyWorkspace, 'addStallDay'>;
  /** The day that the next one takes its goods and costs from. */
  id: string;
  stallDay: StallDay;
}>;

/** Begins the next fair with the goods and costs of this one, and opens it. */
export function NextLikeIt({ workspace, id, stallDay }: NextLikeItProps) {
  const router = useRouter();
  return (
    <Button
      onPress={() => {
        const next = planNext(workspace, { id, stallDay });
        if (next !== null) router.push(`/stall/${next}`);
      }}
    >
      {closedNames.next}
    </Button>
  );
}
