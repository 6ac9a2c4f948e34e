'use client';

import { useState } from 'react';
import { useJob } from '@/app/_docket/common/useJob';
import { useStudy } from '@/app/_studies/useStudy';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import type { CostSheet } from '@/lib/grid/costSheet';
import type { TablePrice } from '@/lib/price/priceTable';
import type { Line } from '@/shared/schemas/job';
import type { Channel } from '@/shared/schemas/workshop';
import { BreaksOfLine } from './BreaksOfLine';
import styles from './PricesSection.module.css';
import { PriceTable } from './PriceTable';

type PricesOfLineProps = Readonly<{
  sheet: CostSheet;
  line: Line;
  table: readonly TablePrice[];
  taxMode: Channel['taxMode'];
}>;

/** The price table of a line, and what its list does as the quantity rises. */
export function PricesOfLine({ sheet, line, table, taxMode }: PricesOfLineProps) {
  const { input, prices } = useJob();
  const { madeOf, stale } = prices;
  const [pieces, setPieces] = useState<number | null>(null);
  const { newest, failure } = useStudy('list', madeOf, {
    lineId: line.id,
    quantities: pieces === null ? [] : [pieces],
  });
  // Of an older state of the job it stays in view until the new one comes, but nothing is done by it.
  const answer = newest?.answer.lineId === line.id ? newest.answer : null;
  const isOld = stale || newest?.input !== madeOf;
  const index = input.job.lines.findIndex(({ id }) => id === line.id);
  const now = input.job.lines[index];
  return (
    <>
      <PriceTable
        {...{ sheet, line, table, taxMode }}
        ends={isOld ? null : (answer?.ends ?? null)}
        priceStep={madeOf.workshop.policy.priceStep}
      />
      <div className={styles.list}>
        <AnswerMissing what="The prices of this line could not be looked at" failure={failure} />
        {answer !== null && now !== undefined && (
          <BreaksOfLine {...{ index, answer, pieces }} line={now} stale={isOld} onPieces={setPieces} />
        )}
      </div>
    </>
  );
}
