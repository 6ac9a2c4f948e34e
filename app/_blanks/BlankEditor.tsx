'use client';

import { StockSection } from '@/app/_stock/StockSection';
import { textileKinds } from '@/shared/schemas/blank';
import { BlankBasics } from './BlankBasics';
import { BlankRates } from './BlankRates';
import styles from './Blanks.module.css';
import type { BlankFields } from './blankFields';
import { ColourFields } from './ColourFields';
import { FibreFields } from './FibreFields';
import { PriceFields } from './PriceFields';
import { SizeList } from './SizeList';
import { TraitFields } from './TraitFields';

/** Everything that is known of one blank. */
export function BlankEditor({ fields }: Readonly<{ fields: BlankFields }>) {
  return (
    <div className={styles.editor}>
      <section>
        <h3 className={styles.sub}>On hand</h3>
        <StockSection workspace={fields.workspace} id={fields.id} blank={fields.blank} />
      </section>
      <BlankBasics fields={fields} />
      {fields.blank.suppliedBy === 'maker' && (
        <section>
          <h3 className={styles.sub}>Prices</h3>
          <PriceFields fields={fields} />
        </section>
      )}
      {(textileKinds.includes(fields.blank.kind) || fields.blank.fibres.length > 0) && (
        <section>
          <h3 className={styles.sub}>Fibres, as on the sewn label</h3>
          <FibreFields fields={fields} />
        </section>
      )}
      <section>
        <h3 className={styles.sub}>Colour</h3>
        <ColourFields fields={fields} />
      </section>
      <section>
        <h3 className={styles.sub}>Surface, lot and special rules</h3>
        <TraitFields fields={fields} />
      </section>
      <section>
        <h3 className={styles.sub}>Sizes and largest prints</h3>
        <SizeList fields={fields} />
      </section>
      <section>
        <h3 className={styles.sub}>Faults, finishing, delivery</h3>
        <BlankRates fields={fields} />
      </section>
    </div>
  );
}
