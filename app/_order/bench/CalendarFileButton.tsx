'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { saveBytes } from '@/app/_files/saveBytes';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { calendarEntryTitle, calendarFileWords } from '@/app/_words/orders/bench/calendarWords';
import type { LatestDates } from '@/lib/calendar/orderDates';
import { orderEntries } from '@/lib/calendar/orderEntries';
import type { WorkPlan } from '@/lib/calendar/workPlan';
import { type CalendarEntry, calendarFile } from '@/lib/exports/calendarFile';
import { raiseSequences } from '@/lib/exports/raiseSequences';
import styles from './Bench.module.css';
import { handedOut } from './handedOut';

type CalendarFileButtonProps = Readonly<{
  on: OrderOnScreen;
  /** Null where none is left: over, on hold, or wanted on no day any more. */
  days: Readonly<{ latest: LatestDates; plan: WorkPlan; wantedOn: string }> | null;
}>;

/**
 * The days of the order as a file for a calendar; a later one replaces what the calendar has. Where none is left it
 * calls off those that were handed out and are still ahead.
 */
export function CalendarFileButton({ on, days }: CalendarFileButtonProps) {
  const { orderId, order, standing, facts, today } = on;
  const [isSaved, setSaved] = useState(false);
  const now =
    days === null
      ? []
      : orderEntries(orderId, days.wantedOn, days.latest, days.plan).map(({ id, what, when }) => ({
          ...{ id, when, details: '' },
          title: calendarEntryTitle(what, order.name, standing.number),
        }));
  const save = () => {
    // Where this device forgot what it handed out, what happened since has raised the number.
    const [first, ...rest] = raiseSequences(now, handedOut.of(orderId, now), facts.happened.length);
    if (first === undefined) return;
    const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
    const text = calendarFile([first, ...rest], Date.now(), zone);
    saveBytes(`${order.name}.ics`, new TextEncoder().encode(text), 'text/calendar');
    handedOut.remember(orderId, [first, ...rest]);
    setSaved(true);
  };
  // What was saved stays to be saved again.
  if (days === null && !isSaved && !handedOut.of(orderId, now).some((entry) => isAhead(entry, today)))
    return null;
  const words = calendarFileWords[days === null ? 'off' : 'days'];
  return (
    <>
      {words.line !== null && <p className={styles.said}>{words.line}</p>}
      <div className={styles.acts}>
        <Button onPress={save}>{words.button}</Button>
        <span role="status">{isSaved && words.saved}</span>
      </div>
    </>
  );
}

// Helpers

const isAhead = ({ when, isCancelled }: CalendarEntry, today: string): boolean =>
  !isCancelled && (when.kind === 'days' ? when.to : when.day) >= today;
