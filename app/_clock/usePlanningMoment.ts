'use client';

import { useSyncExternalStore } from 'react';
import { useToday } from './useToday';
import { watchClock } from './watchClock';

/** The moment from which is planned. */
export interface PlanningMoment {
  /** YYYY-MM-DD. */
  readonly today: string;
  /** Minutes after its midnight, on the next quarter of an hour: nobody begins in the minute in which it is planned. */
  readonly nowMinute: number;
}

/** The maker's own day and time, moving on by quarters of an hour, so that no plan is worked out anew every minute. */
export function usePlanningMoment(): PlanningMoment {
  const today = useToday();
  return { today, nowMinute: useSyncExternalStore(watchClock, nextQuarter, () => 0) };
}

// Helpers

const QUARTER = 15;

function nextQuarter(): number {
  const now = new Date();
  return Math.ceil((now.getHours() * 60 + now.getMinutes()) / QUARTER) * QUARTER;
}
