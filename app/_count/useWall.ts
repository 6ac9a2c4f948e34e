'use client';

import { useSyncExternalStore } from 'react';
import { wallAt } from '@/app/_clock/wallAt';
import type { WallTime } from '@/lib/stall/count/sellingTime';

/** How soon prices of the last hour show, ms. */
const TURN_MS = 5_000;

/** What the clock of the device shows; the same object through a minute. */
export const useWall = (): WallTime => useSyncExternalStore(watch, now, () => never);

// Helpers

const never: WallTime = { day: '1970-01-01', minute: 0 };
let last = never;

function now(): WallTime {
  const wall = wallAt(Date.now());
  if (wall.day !== last.day || wall.minute !== last.minute) last = wall;
  return last;
}

function watch(onChange: () => void): () => void {
  const timer = setInterval(onChange, TURN_MS);
  document.addEventListener('visibilitychange', onChange);
  return () => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', onChange);
  };
}
