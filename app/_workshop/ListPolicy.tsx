'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { BreakFields } from '@/app/_fields/BreakFields';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { numberLimits } from '@/shared/limits';
import { workshopSchema } from '@/shared/schemas/workshop';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

/** What the maker's own list begins with when the sums no longer choose: doubling breaks, as most lists have. */
const OWN_TO_BEGIN_WITH = [1, 6, 12, 24, 48];

/** How lists of what is made to order are suggested: the rule, and who chooses their breaks. */
export function ListPolicy({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const { listRule, breaks, chosenBreaks } = workshop.policy;
  return (
    <>
      <h3 className={styles.sub}>Price lists</h3>
      <FieldGroup pairs>
        <ChoiceField
          label="Orders are priced"
          id={workshopFieldId(['policy', 'listRule'])}
          value={listRule}
          choices={[
            { value: 'capped', label: 'by quantity, none dearer than a larger one' },
            { value: 'setUpApart', label: 'so much to start and so much a piece' },
          ]}
          hint="A line of a job can differ. What is made to stock has one price a size."
          onCommit={(rule) => set('Rule of price lists', ['policy', 'listRule'], rule)}
        />
        <ChoiceField
          label="Quantity breaks"
          value={breaks === null ? 'sums' : 'own'}
          choices={[
            { value: 'sums', label: 'chosen by the sums, for each job' },
            { value: 'own', label: 'my own' },
          ]}
          onCommit={(by) =>
            set('Quantity breaks', ['policy', 'breaks'], by === 'sums' ? null : OWN_TO_BEGIN_WITH)
          }
        />
      </FieldGroup>
      {breaks === null ? (
        <FieldGroup pairs>
          {(['count', 'from', 'judgedTo'] as const).map((name) => (
            <NumberField
              key={name}
              label={labels[name].label}
              id={workshopFieldId(['policy', 'chosenBreaks', name])}
              width="narrow"
              unit={labels[name].unit}
              value={chosenBreaks[name]}
              needed
              {...numberLimits(workshopSchema, ['policy', 'chosenBreaks', name])}
              hint={labels[name].hint}
              onCommit={(value) => set(labels[name].label, ['policy', 'chosenBreaks', name], value)}
            />
          ))}
        </FieldGroup>
      ) : (
        <>
          <p className={styles.words}>From these quantities on, the price table has a column of its own.</p>
          <BreakFields
            breaks={breaks}
            onCommit={(starts) => set('Quantity breaks', ['policy', 'breaks'], starts)}
          />
        </>
      )}
    </>
  );
}

const labels = {
  count: { label: 'How many breaks', unit: 'breaks', hint: undefined },
  from: { label: 'Least order', unit: 'pieces', hint: undefined },
  judgedTo: {
    label: 'Orders you are asked for, up to',
    unit: 'pieces',
    hint: 'Breaks are chosen so that none of these pays much over its own sum.',
  },
} as const;
