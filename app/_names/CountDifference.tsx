'use client';

import { useState } from 'react';
import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { nameCountWords } from '@/app/_words/names/nameCountWords';
import { takeCountsWords } from '@/app/_words/names/namesAnswerWords';
import type { compareCounts } from '@/lib/names/compareCounts';
import styles from './Names.module.css';
import type { NamesWorkspace } from './namesWorkspace';
import type { NamedLine } from './orderNames';

type CountDifferenceProps = Readonly<{
  workspace: NamesWorkspace;
  named: NamedLine;
  compared: ReturnType<typeof compareCounts>;
}>;

/** What the names say otherwise than the quantities of the job, and which of the two is to count. */
export function CountDifference({ workspace, named, compared }: CountDifferenceProps) {
  const formatter = formatterFor(useTextContext());
  /** What the maker let stand; another difference is told anew. */
  const [kept, setKept] = useState<string | null>(null);
  const { jobId, line } = named;
  const words = compared.named === 0 ? null : nameCountWords(compared, formatter);
  if (words === null || words === kept) return null;
  return (
    <div className={styles.difference}>
      <Advice severity="caution">{words}</Advice>
      {compared.differences.length > 0 && (
        <div className={styles.ways}>
          <Button
            onPress={() =>
              workspace.edit(`Pieces of ${line.name} as the names say`, [
                {
                  do: 'change',
                  kind: 'job',
                  id: jobId,
                  to: (job) => ({
                    ...job,
                    lines: job.lines.map((one) =>
                      one.id === line.id ? { ...one, quantities: compared.byNames } : one,
                    ),
                  }),
                },
              ])
            }
          >
            {takeCountsWords(compared.byNames, formatter)}
          </Button>
          <Button kind="quiet" onPress={() => setKept(words)}>
            Keep what is ordered
          </Button>
        </div>
      )}
    </div>
  );
}
