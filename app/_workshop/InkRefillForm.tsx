'use client';

import { useState } from 'react';
import { numberLimits } from '@/shared/limits';
import { inkRecordSchema } from '@/shared/schemas/inkRecord';
import { newId } from '../_documents/newId';
import { useToday } from '../_documents/useToday';
import { DateField } from '../_fields/DateField';
import { EntryForm } from '../_fields/EntryForm';
import { FieldGroup } from '../_fields/FieldGroup';
import { MeasureField } from '../_fields/MeasureField';
import { useTextContext } from '../_fields/useTextContext';
import { Button } from '../_shell/Button';
import { Disclosure } from '../_shell/Disclosure';
import { speakerOf } from '../_text/speaker';
import styles from './InkRecord.module.css';
import { inkDayTrouble } from './inkDayTrouble';
import type { WorkshopDesk } from './workshopDesk';

/** A desktop printer's tanks hold less than this in all; from memory. */
const MUCH_ML = 1000;

/** A short form for ink that was poured in. */
export function InkRefillForm({ desk }: Readonly<{ desk: WorkshopDesk }>) {
  const { maker } = desk;
  const today = useToday();
  const speak = speakerOf(useTextContext());
  const [day, setDay] = useState<string | null>(null);
  const [mL, setMl] = useState<number | null>(null);
  const on = day ?? today;
  const trouble = inkDayTrouble(on, today);
  const missing = mL === null ? 'How much was poured in comes first.' : trouble;
  const add = () => {
    if (mL === null) return;
    const refill = { id: newId(), day: on, mL };
    maker.changeWorkshop(`Refill of ${speak.day(on)}`, (now) => ({
      ...now,
      inkRecord: { ...now.inkRecord, refills: [...now.inkRecord.refills, refill] },
    }));
    setMl(null);
    setDay(null);
  };
  return (
    <Disclosure id="ink-refill" level={4} heading="Note a refill" line="when ink is poured in">
      <EntryForm className={styles.form} label="A refill" missing={missing} onEnter={add}>
        <FieldGroup pairs>
          <MeasureField
            label="Poured in, all colours"
            kind="volume"
            width="narrow"
            value={mL}
            {...numberLimits(inkRecordSchema, ['refills', 0, 'mL'])}
            caution={
              mL !== null && mL > MUCH_ML
                ? 'More than the tanks of a desktop printer hold. Is the decimal mark where it belongs?'
                : undefined
            }
            onCommit={setMl}
          />
          <DateField label="On" width="narrow" value={on} issue={trouble} onCommit={setDay} />
        </FieldGroup>
        <Button type="submit" kind="strong" blockedBy={missing}>
          Note the refill
        </Button>
      </EntryForm>
    </Disclosure>
  );
}
