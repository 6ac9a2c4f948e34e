'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import type { Charges } from '@/shared/schemas/charges';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

type MinuteKey = 'artMinutesIncluded' | 'nameMinutes' | 'foldMinutes' | 'splitMinutes' | 'changeMinutes';

const minutes: readonly { readonly key: MinuteKey; readonly label: string; readonly hint?: string }[] = [
  { key: 'artMinutesIncluded', label: 'Artwork the price includes', hint: 'The rest goes by the hour.' },
  { key: 'nameMinutes', label: 'Typing and checking a name' },
  { key: 'foldMinutes', label: 'Folding and bagging a piece' },
  { key: 'splitMinutes', label: 'Splitting an order by name' },
  { key: 'changeMinutes', label: 'A change after approval' },
];

const rushes: readonly { readonly key: keyof Charges['rushShares']; readonly label: string }[] = [
  { key: 'underNormal', label: 'Sooner than usual' },
  { key: 'underHalf', label: 'In less than half the time' },
  { key: 'nextDay', label: 'For the next day' },
];

/** What is charged around the price of a piece; usual figures are from memory until the maker sets them. */
export function ChargesSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const { charges } = workshop.policy;
  const path = (...rest: readonly string[]) => ['policy', 'charges', ...rest];
  const amounts = [
    { key: 'minimumProfit', label: 'Profit wanted of the least order' },
    { key: 'changeAtLeast', label: 'Least for a change after approval' },
  ] as const;
  return (
    <>
      <p className={styles.words}>
        The docket works out from these what to charge for small orders, names, changes and rush. They are
        usual figures, from memory: replace them with yours.
      </p>
      <FieldGroup pairs>
        {amounts.map(({ key, label }) => (
          <NumberField
            key={key}
            label={label}
            id={workshopFieldId(path(key))}
            width="narrow"
            unit={workshop.currency}
            value={charges[key]}
            needed
            min={0}
            max={1e6}
            onCommit={(value) => set(label, path(key), value)}
          />
        ))}
        {minutes.map(({ key, label, hint }) => (
          <NumberField
            key={key}
            label={label}
            id={workshopFieldId(path(key))}
            width="narrow"
            unit="min"
            value={charges[key]}
            needed
            min={0}
            max={600}
            hint={hint}
            onCommit={(value) => set(label, path(key), value)}
          />
        ))}
        <NumberField
          label="Working days an order takes"
          id={workshopFieldId(path('normalWorkingDays'))}
          width="narrow"
          unit="days"
          value={charges.normalWorkingDays}
          needed
          decimals={0}
          min={1}
          max={250}
          onCommit={(value) => set('Usual working days', path('normalWorkingDays'), value)}
        />
        {rushes.map(({ key, label }) => (
          <MeasureField
            key={key}
            label={label}
            id={workshopFieldId(path('rushShares', key))}
            kind="share"
            width="narrow"
            value={charges.rushShares[key]}
            needed
            min={0}
            max={5}
            hint="On top of the price."
            onCommit={(value) => set(`Rush: ${label}`, path('rushShares', key), value)}
          />
        ))}
      </FieldGroup>
    </>
  );
}
