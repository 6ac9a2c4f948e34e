'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { LaterPart } from '@/app/_network/LaterPart';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { runTable } from '@/app/_words/making/runs/runTable';
import { laterParts } from './laterParts';

type RunSheetSectionProps = Readonly<{ on: RunOnScreen; numeral: number }>;

/** The sheet that lies beside the press, looked at before it is printed. */
export function RunSheetSection({ on, numeral }: RunSheetSectionProps) {
  const isReady = on.facts.standard === null ? on.planned !== null : on.jobs.length > 0;
  return (
    <CardSection
      {...{ numeral }}
      id="paper"
      heading={runTable.paper}
      answer={
        isReady ? runTable.paperAnswer : on.facts.standard === null ? runTable.noPaper : runTable.noPaperNow
      }
    >
      {isReady && (
        <FoldRow
          place={`${on.id} paper`}
          folds={[
            {
              id: 'run-paper',
              name: runTable.paperFold,
              body: () => <LaterPart part={laterParts.sheet} what="The run sheet" props={{ on }} />,
            },
          ]}
        />
      )}
    </CardSection>
  );
}
