'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { saveBytes } from '@/app/_files/saveBytes';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { calendarEntryTitle } from '@/app/_words/orders/calendarWords';
import type { LatestDates } from '@/lib/calendar/orderDates';
import { orderEntries } from '@/lib/calendar/orderEntries';
import type { WorkPlan } from '@/lib/calendar/workPlan';
import { calendarFile } from '@/lib/exports/calendarFile';
import { raiseSequences } from '@/lib/exports/raiseSequences';
import styles from './Bench.module.css';
import { handedOut } from './handedOut';

type CalendarFileButtonProps = Readonly<{
  on: OrderOnScreen;
  latest: LatestDates;
  plan: WorkPlan;
  wantedOn: string;
}>;

/** The days of the order as a file for a calendar; a later one replaces what the calendar has. */
export function CalendarFileButton({ on, latest, plan, wantedOn }: CalendarFileButtonProps) {
  const { orderId, order, standing, facts } = on;
  const [isSaved, setSaved] = useState(false);
  const save = () => {
    const now = orderEntries(orderId, wantedOn, latest, plan).map(({ id, what, when }) => ({
      ...{ id, when, details: '' },
      title: calendarEntryTitle(what, order.name, standing.number),
    }));
    // Where this device forgot what it handed out, what happened since has raised the number.
    const [first, ...rest] = raiseSequences(now, handedOut.of(orderId, now), facts.happened.length);
    if (first === undefined) return;
    const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
    const text = calendarFile([first, ...rest], Date.now(), zone);
    saveBytes(`${order.name}.ics`, new TextEncoder().encode(text), 'text/calendar');
    handedOut.remember(orderId, [first, ...rest]);
    setSaved(true);
  };
  return (
    <div className={styles.acts}>
      <Button onPress={save}>Calendar file</Button>
      <span role="status">
        {isSaved && 'Saved. Open it with your calendar; save it again when something has changed.'}
      </span>
    </div>
  );
}
