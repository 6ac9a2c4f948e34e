'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { typing } from '@/app/_documents/typing';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { designChoice, makeStockLabel, makeStockWords, orderJobsWords } from '@/app/_words/stall/goodsWords';
import { designKey } from '@/lib/stall/designKey';
import { freshDesign } from './freshDesign';
import styles from './Goods.module.css';
import { linesForOrder } from './linesOfJobs';

type MadeForOrderProps = Readonly<{
  on: Pick<StallOnScreen, 'workspace' | 'id' | 'stallDay'>;
  rangeId: string;
  /** Why no further design can be added; left out where one can. */
  blockedBy: string | undefined;
}>;

/** Lines of jobs made for an order: one tap makes the job stock and brings the line, in one step. */
export function MadeForOrder({ on: { workspace, id, stallDay }, rangeId, blockedBy }: MadeForOrderProps) {
  const [chosen, setChosen] = useState<string | null>(null);
  const lines = linesForOrder(workspace, stallDay.ranges);
  const line = lines.find((one) => designKey(one) === chosen) ?? lines[0];
  if (line === undefined) return null;
  const make = () => {
    typing.ends();
    const { jobId } = line;
    workspace.edit(makeStockLabel(line.job), [
      { do: 'change', kind: 'job', id: jobId, to: (job) => ({ ...job, madeFor: 'stock' }) },
      {
        do: 'change',
        kind: 'stallDay',
        id,
        to: (now) => ({
          ...now,
          ranges: now.ranges.map((range) =>
            range.id === rangeId ? { ...range, designs: [...range.designs, freshDesign(line)] } : range,
          ),
        }),
      },
    ]);
  };
  return (
    <div className={styles.forOrder}>
      <p className={styles.quiet}>{orderJobsWords}</p>
      {lines.length > 1 && (
        <ChoiceField
          label="A design made for an order"
          width="full"
          value={designKey(line)}
          choices={lines.map((one) => ({ value: designKey(one), label: designChoice(one) }))}
          onCommit={setChosen}
        />
      )}
      <Button blockedBy={blockedBy} onPress={make}>
        {makeStockWords(line)}
      </Button>
    </div>
  );
}
