'use client';

import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { mostEntries, numberLimits } from '@/shared/limits';
import { workshopSchema } from '@/shared/schemas/workshop';
import styles from './BreakFields.module.css';
import { NumberField } from './NumberField';

type BreakFieldsProps = Readonly<{
  breaks: readonly number[];
  onCommit: (breaks: readonly number[]) => void;
}>;

/** The first quantity of each break; each stays between its neighbours, so that they rise. */
export function BreakFields({ breaks, onCommit }: BreakFieldsProps) {
  const id = workshopFieldId(['policy', 'breaks']);
  const last = breaks.at(-1) ?? 0;
  const limits = numberLimits(workshopSchema, ['policy', 'breaks', 0]);
  const most = limits.max ?? last;
  const mostBreaks = mostEntries(workshopSchema, ['policy', 'breaks']);
  const isFull = breaks.length >= mostBreaks || last >= most;
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
            {...limits}
            min={(breaks[index - 1] ?? 0) + 1}
            max={(breaks[index + 1] ?? most + 1) - 1}
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
        blockedBy={isFull ? `${mostBreaks} breaks up to ${most} pieces are the most.` : undefined}
        onPress={() => onCommit([...breaks, Math.min(most, Math.max(2, last * 2))])}
      >
        Add a break
      </Button>
    </div>
  );
}
