'use client';

import { textileKinds } from '@/shared/schemas/blank';
import { BlankBasics } from './BlankBasics';
import { BlankRates } from './BlankRates';
import styles from './Blanks.module.css';
import type { BlankDesk } from './blankForm';
import { ColourFields } from './ColourFields';
import { FibreFields } from './FibreFields';
import { PriceFields } from './PriceFields';
import { SizeList } from './SizeList';

/** Everything that is known of one blank. */
export function BlankEditor({ desk }: Readonly<{ desk: BlankDesk }>) {
  return (
    <div className={styles.editor}>
      <BlankBasics desk={desk} />
      <section>
        <h3 className={styles.sub}>Prices</h3>
        <PriceFields desk={desk} />
      </section>
      {(textileKinds.includes(desk.blank.kind) || desk.blank.fibres.length > 0) && (
        <section>
          <h3 className={styles.sub}>Fibres, as on the sewn label</h3>
          <FibreFields desk={desk} />
        </section>
      )}
      <section>
        <h3 className={styles.sub}>Colour</h3>
        <ColourFields desk={desk} />
      </section>
      <section>
        <h3 className={styles.sub}>Sizes and largest prints</h3>
        <SizeList desk={desk} />
      </section>
      <section>
        <h3 className={styles.sub}>Faults, finishing, delivery</h3>
        <BlankRates desk={desk} />
      </section>
    </div>
  );
}
