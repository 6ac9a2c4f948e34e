'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { weekdayWords } from '@/app/_words/workshop/workshopWords';
import { copyDay } from '@/lib/calendar/weekEdits';
import type { Block } from '@/shared/schemas/benchWeek';
import styles from './Hours.module.css';

type CopyDayProps = Readonly<{
  blocks: readonly Block[];
  most: number;
  onCopy: (label: string, copied: readonly Block[]) => void;
}>;

const days = weekdayWords.map((label, index) => ({ value: String(index), label }));

/** Gives other weekdays the blocks of one, in place of their own. */
export function CopyDay({ blocks, most, onCopy }: CopyDayProps) {
  const [from, setFrom] = useState(0);
  const [chosen, setChosen] = useState('weekdays');
  const [told, setTold] = useState('');
  const others = [0, 1, 2, 3, 4, 5, 6].filter((weekday) => weekday !== from);
  const targets = [
    { value: 'weekdays', label: 'Monday to Friday', to: others.filter((weekday) => weekday < 5) },
    { value: 'all', label: 'every day', to: others },
    ...others.map((weekday) => ({
      value: String(weekday),
      label: weekdayWords[weekday] ?? '',
      to: [weekday],
    })),
  ];
  const target = targets.find(({ value }) => value === chosen) ?? targets[0];
  if (target === undefined) return null;
  const copied = copyDay(blocks, from, target.to, newId);
  const label = `Copy ${weekdayWords[from]} to ${target.label}`;
  return (
    <div className={styles.copy}>
      <ChoiceField
        label="Copy the blocks of"
        width="narrow"
        value={String(from)}
        choices={days}
        onCommit={(value) => setFrom(Number(value))}
      />
      <ChoiceField label="Give them to" value={target.value} choices={targets} onCommit={setChosen} />
      <Button
        spoken={label}
        blockedBy={copied.length > most ? `${most} blocks are the most there can be.` : undefined}
        onPress={() => {
          typing.ends();
          onCopy(label, copied);
          setTold(`${target.label} is now as ${weekdayWords[from]}.`);
        }}
      >
        Copy
      </Button>
      <p role="status">{told}</p>
    </div>
  );
}
