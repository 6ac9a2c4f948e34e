'use client';

import { useSyncExternalStore } from 'react';
import { dayOf } from './dayOf';
import { watchClock } from './watchClock';

/** The maker's own day, YYYY-MM-DD; moves on at midnight and whenever the page is shown again. */
export const useToday = (): string => useSyncExternalStore(watchClock, today, () => '1970-01-01');

/** @returns the maker's own day now. */
export const today = (): string => dayOf(new Date());
