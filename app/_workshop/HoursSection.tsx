'use client';

import { Button } from '@/app/_controls/Button';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

/** Typed once and far down, so its code comes behind what is seen first. */
const lazyHoursFields = lazy(() => import('./HoursFields').then(({ HoursFields }) => HoursFields));

/** When the bench is free: blocks of a week, and days off. */
export function HoursSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const fetched = useLazy(lazyHoursFields);
  return (
    <div id={workshopFieldId(['blocks'])} tabIndex={-1}>
      {workshop.blocks === null && (
        <>
          <p className={styles.words}>
            Not yet said, so no job can be told whether it will be ready in time.
          </p>
          <Button onPress={() => set('Free blocks', ['blocks'], usualBlocks)}>
            Begin with an hour on weekdays and four on Saturday
          </Button>
        </>
      )}
      {fetched.kind === 'missing' && <PartMissing what="The part with the free blocks" missing={fetched} />}
      {fetched.kind === 'here' && <fetched.value fields={fields} />}
    </div>
  );
}
