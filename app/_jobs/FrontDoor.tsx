'use client';

import { lazyScreen, ScreenDoor, type Sent } from '@/app/_firstScreen/ScreenDoor';
import { warmPriceWorker } from '@/app/_pricing/priceWorker';

const lazyFront = lazyScreen(() => import('./FrontScreen').then(({ FrontScreen }) => FrontScreen));
// What opens here is a job, and the first thing it asks for is its price.
if (typeof window !== 'undefined') warmPriceWorker();

/** The front door: what the page was sent with, until the maker's own is here. */
export function FrontDoor(sent: Sent) {
  return <ScreenDoor lazy={lazyFront} {...sent} />;
}
