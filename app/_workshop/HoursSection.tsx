'use client';

import { Button } from '@/app/_controls/Button';
import { weekdayWords } from '@/app/_words/workshop/workshopWords';
import { calendarOf } from '@/lib/calendar/calendar';
import { minutesOfWeekdays } from '@/lib/calendar/freeMinutes';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

/** The hours that are free for the bench, day by day. */
export function HoursSection({ fields: { workshop, set } }: Readonly<{ fields: WorkshopFields }>) {
  const calendar = calendarOf(workshop);
  if (calendar === null)
    return (
      <>
        <p className={styles.words}>Not yet said, so no job can be told whether it will be ready in time.</p>
        <Button onPress={() => set('Free hours', ['blocks'], usualBlocks)}>
          Begin with an hour on weekdays and four on Saturday
        </Button>
      </>
    );
  const free = minutesOfWeekdays(calendar);
  return (
    <>
      <div className={styles.week}>
        {weekdayWords.map((day, index) => (
          <p key={day}>
            {day} {(free[index] ?? 0) / 60}
          </p>
        ))}
      </div>
      <Button kind="quiet" onPress={() => set('Free hours', ['blocks'], null)}>
        Leave them unsaid
      </Button>
    </>
  );
}
