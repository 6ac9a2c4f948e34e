'use client';

import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { QuantityField } from '@/app/_fields/QuantityField';
import { QuantityRow } from '@/app/_fields/QuantityRow';
import { type StockRow, shouldBeLeft } from '@/lib/stall/evening/stockRows';
import { numberLimits } from '@/shared/limits';
import { dayCloseSchema } from '@/shared/schemas/stallPapers';
import { designRows } from './designRows';
import styles from './Slips.module.css';

const { max: most } = numberLimits(dayCloseSchema, ['goods', 0, 'counted']);

type SizesCountedProps = Readonly<{
  on: EveningOnScreen;
  onCount: (row: StockRow, pieces: number | null) => void;
}>;

/** A box for every size: where sales were tapped it holds what should be left, and only what differs is typed. */
export function SizesCounted({ on, onCount }: SizesCountedProps) {
  const { evening, answers } = on;
  const isTapped = evening.soldFrom === 'taps';
  return (
    <>
      <p className={styles.quiet}>
        {isTapped
          ? 'Each box holds what should be left. Type only what differs.'
          : 'Type what is left of each size, 0 where all went.'}
      </p>
      {designRows(evening).map(({ id, name, hasSizes, rows }) => (
        <div className={styles.design} key={id}>
          <h3>{name}</h3>
          <QuantityRow label={`${name}, left`}>
            {rows.map((row) => (
              <QuantityField
                key={row.key}
                label={hasSizes ? row.goods.size : row.goods.design}
                value={answers.stock.counted[row.key]?.pieces ?? (isTapped ? shouldBeLeft(row) : null)}
                max={most}
                onCommit={(pieces) => onCount(row, pieces)}
              />
            ))}
          </QuantityRow>
        </div>
      ))}
    </>
  );
}
