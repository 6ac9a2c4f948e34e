'use client';

import type { InkReading } from '@/lib/artwork/readInkRecord';
import { useToday } from '../_documents/useToday';
import { useTextContext } from '../_fields/useTextContext';
import { Button } from '../_shell/Button';
import { speakerOf } from '../_text/speaker';
import styles from './InkRecord.module.css';
import { inkWords } from './inkWords';
import { measuredInk } from './measuredInk';
import type { WorkshopDesk } from './workshopDesk';

/** What the record tells, what it still wants, and the way to put its figures in force. */
export function InkTold({ desk, reading }: Readonly<{ desk: WorkshopDesk; reading: InkReading }>) {
  const { workshop, maker } = desk;
  const speak = speakerOf(useTextContext());
  const today = useToday();
  const { fit } = reading;
  const words = inkWords(reading, workshop, speak);
  const measured = measuredInk(fit, workshop.rates, today);
  if (workshop.inkRecord.refills.length === 0 && workshop.inkRecord.runs.length === 0) return null;
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
                maker.changeWorkshop('Measured ink', (now) => ({
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
