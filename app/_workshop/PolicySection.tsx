'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { numberLimits } from '@/shared/limits';
import { workshopSchema } from '@/shared/schemas/workshop';
import { ListPolicy } from './ListPolicy';
import { RateLines } from './RateLines';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

/** How prices are made: margin, breaks, endings, and the gaps sheets are laid out with. */
export function PolicySection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const { policy, currency } = workshop;
  return (
    <>
      <RateLines fields={fields} groups={['price']} />
      <ListPolicy fields={fields} />
      <h3 className={styles.sub}>Endings and gaps</h3>
      <FieldGroup pairs>
        <NumberField
          label="Prices end on whole"
          id={workshopFieldId(['policy', 'priceStep'])}
          width="narrow"
          unit={currency}
          value={policy.priceStep}
          needed
          {...numberLimits(workshopSchema, ['policy', 'priceStep'])}
          hint="0.5 gives prices like 16.50."
          onCommit={(step) => set('Price ending', ['policy', 'priceStep'], step)}
        />
        <NumberField
          label="Up-charges in steps of"
          id={workshopFieldId(['policy', 'upChargeStep'])}
          width="narrow"
          unit={currency}
          value={policy.upChargeStep}
          {...numberLimits(workshopSchema, ['policy', 'upChargeStep'])}
          hint="For larger sizes. Empty: as prices end."
          whenEmpty="Until then they are as prices end."
          onCommit={(step) => set('Step of up-charges', ['policy', 'upChargeStep'], step)}
        />
        <MeasureField
          label="Gap between pieces"
          id={workshopFieldId(['policy', 'gutterMm'])}
          kind="length"
          width="narrow"
          value={policy.gutterMm}
          needed
          {...numberLimits(workshopSchema, ['policy', 'gutterMm'])}
          onCommit={(gap) => set('Gap between pieces', ['policy', 'gutterMm'], gap)}
        />
        <MeasureField
          label="Room for tape"
          id={workshopFieldId(['policy', 'tapeMarginMm'])}
          kind="length"
          width="narrow"
          value={policy.tapeMarginMm}
          needed
          {...numberLimits(workshopSchema, ['policy', 'tapeMarginMm'])}
          onCommit={(room) => set('Room for tape', ['policy', 'tapeMarginMm'], room)}
        />
      </FieldGroup>
      <div className={styles.below}>
        <ChoiceField
          label="Tax is rounded"
          id={workshopFieldId(['policy', 'taxRounding'])}
          value={policy.taxRounding}
          choices={[
            { value: 'line', label: 'on each line of a paper' },
            { value: 'document', label: 'once for the paper' },
          ]}
          hint="Ask your local authority which holds."
          onCommit={(rounding) => set('Rounding of tax', ['policy', 'taxRounding'], rounding)}
        />
      </div>
      <div className={styles.below}>
        <CheckField
          label="The yearly cost of the workshop already pays for worn machines"
          id={workshopFieldId(['policy', 'wearInOverhead'])}
          checked={policy.wearInOverhead}
          hint="Then jobs carry no wear of their own, and nothing is counted twice."
          onCommit={(inside) => set('Wear in overhead', ['policy', 'wearInOverhead'], inside)}
        />
      </div>
    </>
  );
}
