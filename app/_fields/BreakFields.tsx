'use client';

import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import styles from '@/app/_workshop/WorkshopParts.module.css';
import { NumberField } from './NumberField';

/** Largest first quantity of a break, and the most breaks, that the workshop takes. */
const MOST_PIECES = 2000;
const MOST_BREAKS = 12;

type BreakFieldsProps = Readonly<{
  breaks: readonly number[];
  onCommit: (breaks: readonly number[]) => void;
}>;

/** The first quantity of each break; each stays between its neighbours, so that they rise. */
export function BreakFields({ breaks, onCommit }: BreakFieldsProps) {
  const id = workshopFieldId(['policy', 'breaks']);
  const last = breaks.at(-1) ?? 0;
  const isFull = breaks.length >= MOST_BREAKS || last >= MOST_PIECES;
  const replace = (index: number, value: number | null) => {
    if (value !== null) onCommit(breaks.map((old, at) => (at === index ? value : old)));
  };
  return (
    <div className={styles.breaks} id={id} tabIndex={-1}>
      {breaks.map((first, index) => (
        <div
          // A break is nothing but its place in the list.
          // biome-ignore lint/suspicious/noArrayIndexKey: as above
          key={index}
          className={styles.break}
        >
          <NumberField
            label={`Break ${index + 1}, from`}
            width="full"
            unit="pieces"
            value={first}
            needed
            decimals={0}
            min={(breaks[index - 1] ?? 0) + 1}
            max={(breaks[index + 1] ?? MOST_PIECES + 1) - 1}
            onCommit={(value) => replace(index, value)}
          />
          {breaks.length > 1 && (
            <Button
              kind="quiet"
              onPress={() => {
                focusById(id);
                onCommit(breaks.filter((_, at) => at !== index));
              }}
            >
              Remove <span className="visuallyHidden">break {index + 1}</span>
            </Button>
          )}
        </div>
      ))}
      <Button
        blockedBy={isFull ? `${MOST_BREAKS} breaks up to ${MOST_PIECES} pieces are the most.` : undefined}
        onPress={() => onCommit([...breaks, Math.min(MOST_PIECES, Math.max(2, last * 2))])}
      >
        Add a break
      </Button>
    </div>
  );
}
