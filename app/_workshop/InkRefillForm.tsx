'use client';

import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import { newId } from '@/app/_documents/newId';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import styles from './InkRecord.module.css';
import { inkDayProblem } from './inkDayProblem';
import type { WorkshopFields } from './workshopFields';

/** Most that is poured in at once: more is a litre typed as millilitres' thousand. */
const MOST_ML = 100_000;
/** A desktop printer's tanks hold less than this in all; from memory. */
const MUCH_ML = 1000;

/** A short form for ink that was poured in. */
export function InkRefillForm({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workspace } = fields;
  const today = useToday();
  const formatter = formatterFor(useTextContext());
  const [day, setDay] = useState<string | null>(null);
  const [mL, setMl] = useState<number | null>(null);
  const on = day ?? today;
  const problem = inkDayProblem(on, today);
  const missing = mL === null ? 'How much was poured in comes first.' : problem;
  const add = () => {
    if (mL === null) return;
    const refill = { id: newId(), day: on, mL };
    workspace.changeWorkshop(`Refill of ${formatter.day(on)}`, (now) => ({
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
            above={0}
            max={MOST_ML}
            caution={
              mL !== null && mL > MUCH_ML
                ? 'More than the tanks of a desktop printer hold. Is the decimal mark where it belongs?'
                : undefined
            }
            onCommit={setMl}
          />
          <DateField label="On" width="narrow" value={on} issue={problem} onCommit={setDay} />
        </FieldGroup>
        <Button type="submit" kind="strong" blockedBy={missing}>
          Note the refill
        </Button>
      </EntryForm>
    </Disclosure>
  );
}
