'use client';

import { Button } from '@/app/_controls/Button';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { TimeField } from '@/app/_fields/TimeField';
import { blockLengthWords, blockWords } from '@/app/_words/workshop/hoursWords';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import type { Block } from '@/shared/schemas/benchWeek';
import styles from './Hours.module.css';

const DAY_MINUTES = 1440;

type BlockRowProps = Readonly<{
  fields: WorkshopFields;
  block: Block;
  /** Its place in the workshop's list. */
  index: number;
  overlaps: boolean;
  onRemove: () => void;
}>;

/** One free block: from a time to a time; one that ends at or before its beginning runs into the next day. */
export function BlockRow({ fields, block, index, overlaps, onRemove }: BlockRowProps) {
  const { locale } = fields.workshop;
  const { fromMinute, minutes } = block;
  const name = blockWords(block, locale);
  const end = (fromMinute + minutes) % DAY_MINUTES;
  const put = (label: string, from: number, to: number) =>
    fields.set(label, ['blocks', index], {
      ...block,
      fromMinute: from,
      minutes: to > from ? to - from : to - from + DAY_MINUTES,
    });
  return (
    <li className={styles.row}>
      <TimeField
        label="From"
        id={workshopFieldId(['blocks', index, 'fromMinute'])}
        value={fromMinute}
        caution={overlaps ? 'Overlaps another block; counted once.' : undefined}
        onCommit={(minute) => put('Begin of a block', minute, end)}
      />
      <TimeField
        label="To"
        id={workshopFieldId(['blocks', index, 'minutes'])}
        value={end}
        hint={blockLengthWords(block, locale)}
        onCommit={(minute) => put('End of a block', fromMinute, minute)}
      />
      <Button kind="quiet" spoken={`Remove ${name}`} onPress={onRemove}>
        Remove
      </Button>
    </li>
  );
}
