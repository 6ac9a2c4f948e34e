'use client';

import { PageHead } from '@/app/_controls/PageHead';
import { EmptyPriceBar } from '@/app/_docket/head/EmptyPriceBar';
import { PricedBar } from '@/app/_docket/head/PricedBar';
import { ExampleBand } from '@/app/_docket/screen/ExampleBand';
import { StandingTitle } from '@/app/_fields/StandingTitle';
import { StandingRuler } from '@/app/_ruler/StandingRuler';
import styles from './ExampleHead.module.css';
import type { SentHead } from './sentHead';

/** How wide a ruler is on an ordinary screen and on a phone, px. */
const WIDE_PX = 560;
const NARROW_PX = 326;

/**
 * The head of the example as it stands in the page that is sent: it can be read before any script has come, and takes
 * the room of the docket's own. Where somebody has things of their own an empty one stands in its place.
 */
export function ExampleHead({ name, customer, whose, currency, figures, written }: SentHead) {
  const format = (value: number) => written[String(value)] ?? '';
  const ruler = { ...figures, format };
  return (
    <>
      <div className={styles.example} data-example-head>
        <PageHead
          title={<StandingTitle value={name} />}
          // The day is counted from the visit. Not shorter than the line with the day: what grows later is painted late.
          line={`for ${customer}, wanted on one of the next Fridays`}
          aside={opening}
        />
        <PricedBar
          {...{ figures, whose, currency }}
          toTax={null}
          toSelling="/workshop"
          typical={<span className={styles.typical}>{figures.typicalWords}</span>}
          stop={false}
        >
          <div className={styles.wide}>
            <StandingRuler {...ruler} widthPx={WIDE_PX} />
          </div>
          <div className={styles.narrow}>
            <StandingRuler {...ruler} widthPx={NARROW_PX} />
          </div>
        </PricedBar>
      </div>
      <div className={styles.empty}>
        <PageHead title={'\u00a0'} line={'\u00a0'} aside={opening} />
        <EmptyPriceBar price="–.––" per={'\u00a0'} tax={'\u00a0'} />
      </div>
    </>
  );
}

/** What stands over that head. On the docket its own band does, at the same place. */
export const SentBand = () => (
  <div className={styles.example}>
    <ExampleBand isFirst />
  </div>
);

// Helpers

const opening = (
  <p className="visuallyHidden" role="status">
    Opening your workshop…
  </p>
);
