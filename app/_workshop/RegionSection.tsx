'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { currencyChoices } from '@/app/_fields/currencyChoices';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { localeChoices } from '@/app/_fields/localeChoices';
import { TextField } from '@/app/_fields/TextField';
import { textLimits } from '@/shared/limits';
import { workshopSchema } from '@/shared/schemas/workshop';
import { unitChoices } from './unitChoices';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

/** The workshop's name, its money, its numbers and its units. */
export function RegionSection({ fields: { workshop, set } }: Readonly<{ fields: WorkshopFields }>) {
  return (
    <>
      <FieldGroup>
        <TextField
          label="Name of the workshop"
          id={workshopFieldId(['name'])}
          value={workshop.name}
          needed
          {...textLimits(workshopSchema, ['name'])}
          onCommit={(name) => set('Name of the workshop', ['name'], name)}
        />
        <ChoiceField
          label="Currency"
          id={workshopFieldId(['currency'])}
          value={workshop.currency}
          choices={currencyChoices(workshop.currency)}
          hint="Amounts stay as they were typed: nothing is converted."
          onCommit={(currency) => set('Currency', ['currency'], currency)}
        />
        <ChoiceField
          label="Numbers and dates as in"
          id={workshopFieldId(['locale'])}
          value={workshop.locale}
          choices={localeChoices(workshop.locale)}
          onCommit={(locale) => set('Numbers and dates', ['locale'], locale)}
        />
      </FieldGroup>
      <h3 className={styles.sub}>Units</h3>
      <FieldGroup pairs>
        {unitChoices.map(({ kind, label, choices }) => (
          <ChoiceField<string>
            key={kind}
            label={label}
            id={workshopFieldId(['units', kind])}
            width="narrow"
            value={workshop.units[kind]}
            choices={choices}
            onCommit={(value) => set(label, ['units', kind], value)}
          />
        ))}
      </FieldGroup>
    </>
  );
}
