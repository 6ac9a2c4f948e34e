'use client';

import { useEffect, useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { DateField } from '@/app/_fields/DateField';
import { TextField } from '@/app/_fields/TextField';
import { daysOffWords } from '@/app/_words/workshop/hoursWords';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { daysBetween } from '@/shared/days';
import { mostEntries, textLimits } from '@/shared/limits';
import { type DaysOff, daysOffSchema } from '@/shared/schemas/benchWeek';
import { workshopSchema } from '@/shared/schemas/workshop';
import styles from './Hours.module.css';

const most = mostEntries(workshopSchema, ['daysOff']);

/** Days without bench time: holidays of the place and one's own. */
export function DaysOffFields({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workspace, workshop, set } = fields;
  const { daysOff, locale } = workshop;
  const today = useToday();
  const [removed, setRemoved] = useState<string | null>(null);
  const [added, setAdded] = useState<number | null>(null);
  useEffect(() => {
    if (added !== null) focusById(workshopFieldId(['daysOff', added, 'from']));
  }, [added]);
  const add = () => {
    typing.ends();
    set('Add days off', ['daysOff', daysOff.length], { id: newId(), from: today, to: today, what: '' });
    setAdded(daysOff.length);
  };
  const remove = (off: DaysOff) => {
    typing.ends();
    const name = daysOffWords(off, locale);
    set(
      `Remove ${name}`,
      ['daysOff'],
      daysOff.filter(({ id }) => id !== off.id),
    );
    setAdded(null);
    setRemoved(name);
  };
  return (
    <div className={styles.rows} id={workshopFieldId(['daysOff'])} tabIndex={-1}>
      {daysOff.length > 0 && (
        <ul className={styles.rows}>
          {daysOff.map((off, index) => (
            <DaysOffRow key={off.id} {...{ fields, off, index }} onRemove={() => remove(off)} />
          ))}
        </ul>
      )}
      <RemovedNote
        what={workspace.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void workspace.undo()}
      />
      <div>
        <Button
          blockedBy={daysOff.length >= most ? `${most} is the most there can be.` : undefined}
          onPress={add}
        >
          Add days off
        </Button>
      </div>
    </div>
  );
}

type DaysOffRowProps = Readonly<{
  fields: WorkshopFields;
  off: DaysOff;
  /** Its place in the workshop's list. */
  index: number;
  onRemove: () => void;
}>;

function DaysOffRow({ fields: { workshop, set }, off, index, onRemove }: DaysOffRowProps) {
  const isTurned = daysBetween(off.from, off.to) < 0;
  const day = (label: string, key: 'from' | 'to') => ({
    label,
    id: workshopFieldId(['daysOff', index, key]),
    value: off[key],
    needed: true,
    width: 'narrow' as const,
    onCommit: (value: string | null) => set(`${label}, days off`, ['daysOff', index, key], value),
  });
  return (
    <li className={styles.row}>
      <DateField {...day('First day', 'from')} />
      <DateField
        {...day('Last day', 'to')}
        caution={isTurned ? 'It comes before the first; the days between count all the same.' : undefined}
      />
      <TextField
        label="What for"
        id={workshopFieldId(['daysOff', index, 'what'])}
        value={off.what}
        {...textLimits(daysOffSchema, ['what'])}
        onCommit={(what) => set('What days off are for', ['daysOff', index, 'what'], what)}
      />
      <Button kind="quiet" spoken={`Remove ${daysOffWords(off, workshop.locale)}`} onPress={onRemove}>
        Remove
      </Button>
    </li>
  );
}
