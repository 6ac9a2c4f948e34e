'use client';

import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { inkWords } from '@/app/_words/workshop/inkWords';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import type { InkReading } from '@/lib/ink/record/readInkRecord';
import styles from './InkRecord.module.css';
import { measuredInk } from './measuredInk';

type InkToldProps = Readonly<{
  fields: WorkshopFields;
  reading: InkReading;
  /** Nothing is noted yet. */
  isEmpty: boolean;
}>;

/** What the record tells, what it still wants, and the way to put its figures in force. */
export function InkTold({ fields, reading, isEmpty }: InkToldProps) {
  const { workshop, workspace } = fields;
  const formatter = formatterFor(useTextContext());
  const today = useToday();
  const { fit } = reading;
  const words = inkWords(reading, workshop, formatter);
  const measured = measuredInk(fit, workshop.rates, today);
  if (isEmpty) return null;
  return (
    <div className={styles.told}>
      {words.told.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {words.wants.length > 0 && (
        <ul className={styles.wants}>
          {words.wants.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      {fit.kind === 'fitted' && (
        <div className={styles.take}>
          {measured.isInForce ? (
            <p>
              <strong>These figures are in force.</strong> Every job counts with them, marked measured.
            </p>
          ) : (
            <Button
              kind="strong"
              blockedBy={
                fit.isEnough
                  ? undefined
                  : 'With fewer than two hundred prints a typical figure is the better guess.'
              }
              onPress={() =>
                workspace.changeWorkshop('Measured ink', (now) => ({
                  ...now,
                  rates: { ...now.rates, ...measured.rates },
                }))
              }
            >
              {measured.isNewer ? 'Use the newer measured figures' : 'Use the measured figures'}
            </Button>
          )}
        </div>
      )}
    </div>
  );
}
