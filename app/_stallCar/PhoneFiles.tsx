'use client';

import { Carry } from '@/app/_copies/Carry';
import { carWords } from '@/app/_words/stall/carWords';
import { BringCount } from './BringCount';
import styles from './Car.module.css';
import type { CarOnScreen, StallPart } from './carOnScreen';

/** The way to the phone and back, by file. */
export function PhoneFiles({ part, car }: Readonly<{ part: StallPart; car: CarOnScreen }>) {
  const { workspace, id, stallDay } = part;
  return (
    <div className={styles.rows}>
      {car.plans.counts === null && (
        <p>Nothing is fixed yet, so a phone would have nothing to count by. Fix the plan first.</p>
      )}
      {car.differences !== null && <p>The phone gets the plan as it was fixed, not as it is now.</p>}
      <Carry store={workspace} what={{ kind: 'stallDay', id, name: stallDay.name }} words={carWords.carry} />
      <BringCount part={part} />
    </div>
  );
}
