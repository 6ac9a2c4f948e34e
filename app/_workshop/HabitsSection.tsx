'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { YesNoField } from '@/app/_fields/YesNoField';
import { numberLimits } from '@/shared/limits';
import type { Habits } from '@/shared/schemas/habits';
import { workshopSchema } from '@/shared/schemas/workshop';
import { ClaimFields } from './ClaimFields';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

const labels = [
  { value: 'kept', label: 'stay in' },
  { value: 'covered', label: 'are covered by the print' },
  { value: 'removed', label: 'are taken out' },
] as const;

/** What is asked once and holds for every job. */
export function HabitsSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const { habits } = workshop;
  const of = <Key extends keyof Habits>(label: string, key: Key) => ({
    label,
    id: workshopFieldId(['habits', key]),
    value: habits[key],
    onCommit: (value: unknown) => set(label, ['habits', key], value),
  });
  return (
    <>
      <FieldGroup>
        {workshop.circuit === null && (
          <YesNoField
            {...of('The circuit of the press bears it?', 'ownCircuit')}
            hint="Better: enter its volts and breaker under Electricity."
          />
        )}
        <YesNoField {...of('The press hangs on an extension lead?', 'extensionLead')} />
        <YesNoField {...of('Somebody stays by a hot press?', 'staysByPress')} />
        <YesNoField {...of('Safety data sheets are on file?', 'safetySheets')} />
        <ChoiceField {...of('Sewn labels', 'sewnLabel')} unchosen="Not yet said" choices={labels} />
        <MeasureField
          {...of('Humidity of the room', 'humidity')}
          kind="share"
          {...numberLimits(workshopSchema, ['habits', 'humidity'])}
          hint="By a hygrometer; empty without one."
        />
        {habits.humidity === null && (
          <YesNoField {...of('The air is neither dry nor damp?', 'humidityFits')} />
        )}
        <NumberField
          {...of('Least order', 'leastPieces')}
          unit="pieces"
          {...numberLimits(workshopSchema, ['habits', 'leastPieces'])}
          hint="Empty where you take any."
        />
      </FieldGroup>
      <h3 className={styles.sub} id={workshopFieldId(['habits', 'claims'])} tabIndex={-1}>
        What buyers are promised
      </h3>
      <ClaimFields fields={fields} />
    </>
  );
}
