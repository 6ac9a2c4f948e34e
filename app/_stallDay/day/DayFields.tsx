'use client';

import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { stallFieldId } from '@/app/_documents/fieldAddress';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { TimeField } from '@/app/_fields/TimeField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { closingCaution, sameDayWords, stageChoices } from '@/app/_words/stall/dayWords';
import { openDayName } from '@/app/_words/stall/stallHeadWords';
import { repeatedDays } from '@/lib/stall/days/repeatedDays';
import { addDays } from '@/shared/days';
import { mostEntries, numberLimits, textLimits } from '@/shared/limits';
import { type StallDay, stallDaySchema } from '@/shared/schemas/stallDay';
import styles from './Day.module.css';

const most = mostEntries(stallDaySchema, ['days']);

/** When and where, how far the place is, and how it is sold. */
export function DayFields({ on }: Readonly<{ on: StallOnScreen }>) {
  const { stallDay, set, workspace } = on;
  return (
    <>
      <OpenDays on={on} />
      <FieldGroup>
        <TextField
          label="Place"
          id={stallFieldId(['place'])}
          value={stallDay.place}
          {...textLimits(stallDaySchema, ['place'])}
          onCommit={(to) => set('Place', ['place'], to)}
        />
        <TextField
          label="Who runs it"
          id={stallFieldId(['organiser'])}
          value={stallDay.organiser}
          {...textLimits(stallDaySchema, ['organiser'])}
          onCommit={(to) => set('Who runs it', ['organiser'], to)}
        />
      </FieldGroup>
      <FieldGroup>
        <ChoiceField
          label="How far the place at it is"
          id={stallFieldId(['stage'])}
          value={stallDay.stage}
          choices={stageChoices}
          onCommit={(to) => set('How far the place is', ['stage'], to)}
        />
        <DateField
          label="Apply by"
          id={stallFieldId(['applyBy'])}
          width="narrow"
          value={stallDay.applyBy}
          onCommit={(to) => set('Apply by', ['applyBy'], to)}
        />
        <DateField
          label="Their answer is due"
          id={stallFieldId(['answerBy'])}
          width="narrow"
          value={stallDay.answerBy}
          onCommit={(to) => set('Their answer is due', ['answerBy'], to)}
        />
      </FieldGroup>
      <ChoiceField
        label="Way of selling"
        id={stallFieldId(['channelId'])}
        value={stallDay.channelId}
        choices={workspace.workshop.channels.map(({ id, name }) => ({ value: id, label: name }))}
        hint="It says tax and fees; kept in the workshop."
        onCommit={(to) => set('Way of selling', ['channelId'], to)}
      />
    </>
  );
}

// Helpers

function OpenDays({ on }: Readonly<{ on: StallOnScreen }>) {
  const { stallDay, set, change, locale } = on;
  const { days } = stallDay;
  const today = useToday();
  const isShared = days.length > 1;
  const twice = repeatedDays(stallDay);
  const remove = (id: string, name: string) => {
    typing.ends();
    change(`Remove ${name}`, (now) => ({ ...now, days: now.days.filter((one) => one.id !== id) }));
  };
  return (
    <div id={stallFieldId(['days'])} className={styles.rows}>
      {days.map(({ id, day, fromMinute, toMinute, weight }, at) => {
        const name = openDayName(day, today, locale);
        return (
          <div key={id} className={styles.row}>
            <DateField
              label={isShared ? `Day ${at + 1}` : 'Day'}
              width="narrow"
              needed
              id={stallFieldId(['days', at, 'day'])}
              value={day}
              caution={twice.includes(at) ? sameDayWords : undefined}
              onCommit={(to) => set('Day of selling', ['days', at, 'day'], to)}
            />
            <TimeField
              label="From"
              value={fromMinute}
              onCommit={(to) => set('Opening', ['days', at, 'fromMinute'], to)}
            />
            <TimeField
              label="To"
              value={toMinute}
              caution={closingCaution(fromMinute, toMinute)}
              onCommit={(to) => set('Closing', ['days', at, 'toMinute'], to)}
            />
            {isShared && (
              <NumberField
                label="Visitors beside the other days"
                width="narrow"
                needed
                value={weight}
                {...numberLimits(stallDaySchema, ['days', 0, 'weight'])}
                onCommit={(to) => set('Visitors of a day', ['days', at, 'weight'], to)}
              />
            )}
            <Button kind="quiet" spoken={`Remove ${name}`} onPress={() => remove(id, name)}>
              Remove
            </Button>
          </div>
        );
      })}
      <div>
        <Button
          blockedBy={days.length >= most ? `${most} days are the most there can be.` : undefined}
          onPress={() => {
            typing.ends();
            set('Add a day', ['days', days.length], nextDay(days.at(-1), today));
          }}
        >
          {days.length === 0 ? 'Set the day' : 'Add a further day'}
        </Button>
      </div>
    </div>
  );
}

/** The day after the last, open as long. */
function nextDay(last: StallDay['days'][number] | undefined, today: string): StallDay['days'][number] {
  return last === undefined
    ? { id: newId(), day: today, fromMinute: 600, toMinute: 1020, weight: 1 }
    : { ...last, id: newId(), day: addDays(last.day, 1) };
}
