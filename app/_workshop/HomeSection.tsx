'use client';

import { textLimits } from '@/shared/limits';
import { workshopSchema } from '@/shared/schemas/workshop';
import { workshopFieldId } from '../_documents/fieldAddress';
import { ChoiceField } from '../_fields/ChoiceField';
import { FieldGroup } from '../_fields/FieldGroup';
import { TextField } from '../_fields/TextField';
import { currencyChoices } from './currencyChoices';
import { localeChoices } from './localeChoices';
import { unitChoices } from './unitChoices';
import styles from './WorkshopParts.module.css';
import type { WorkshopDesk } from './workshopDesk';

/** The workshop's name, its money, its numbers and its units. */
export function HomeSection({ desk: { workshop, set } }: Readonly<{ desk: WorkshopDesk }>) {
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
          choices={currencyChoices()}
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
