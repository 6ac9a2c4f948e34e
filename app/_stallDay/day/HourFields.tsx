'use client';

import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { stallFieldId } from '@/app/_documents/fieldAddress';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { hoursWords } from '@/app/_words/minutesWords';
import { openLongerWords } from '@/app/_words/stall/dayWords';
import { openHours } from '@/lib/stall/days/openHours';
import { mostEntries, numberLimits, textLimits } from '@/shared/limits';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import styles from './Day.module.css';

const most = mostEntries(stallDaySchema, ['hours']);

/** The maker’s own hours of the day, without those at the bench. */
export function HourFields({ on }: Readonly<{ on: StallOnScreen }>) {
  const { stallDay, set, change, locale } = on;
  const { hours } = stallDay;
  const own = hours.reduce((sum, one) => sum + one.hours, 0);
  const told = openLongerWords(openHours(stallDay), own, (long) => hoursWords(long, locale));
  const remove = (id: string, what: string) => {
    typing.ends();
    change(`Remove ${what}`, (now) => ({ ...now, hours: now.hours.filter((one) => one.id !== id) }));
  };
  return (
    <div className={styles.rows} id={stallFieldId(['hours'])}>
      {told !== null && <Advice severity="caution">{told}</Advice>}
      {hours.map(({ id, what, hours: long }, at) => (
        <div key={id} className={styles.row}>
          <TextField
            label="What"
            needed
            value={what}
            {...textLimits(stallDaySchema, ['hours', 0, 'what'])}
            onCommit={(to) => set('Name of hours', ['hours', at, 'what'], to)}
          />
          <NumberField
            label={`How long: ${what}`}
            width="narrow"
            unit="h"
            needed
            value={long}
            {...numberLimits(stallDaySchema, ['hours', 0, 'hours'])}
            onCommit={(to) => set(what, ['hours', at, 'hours'], to)}
          />
          <Button kind="quiet" spoken={`Remove ${what}`} onPress={() => remove(id, what)}>
            Remove
          </Button>
        </div>
      ))}
      <div>
        <Button
          blockedBy={hours.length >= most ? `${most} rows are the most there can be.` : undefined}
          onPress={() => {
            typing.ends();
            set('Add hours', ['hours', hours.length], { id: newId(), what: 'Sell', hours: 0 });
          }}
        >
          Add hours
        </Button>
      </div>
    </div>
  );
}
