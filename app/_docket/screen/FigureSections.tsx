'use client';

import { ChargeSection } from '@/app/_docket/charges/ChargeSection';
import { useInTurn } from '@/app/_docket/common/useInTurn';
import { CostSection } from '@/app/_docket/costs/CostSection';
import { CurveSection } from '@/app/_docket/curve/CurveSection';
import { LeverSection } from '@/app/_docket/levers/LeverSection';
import { PricesSection } from '@/app/_docket/prices/PricesSection';
import { ChannelsSection } from '@/app/_docket/selling/ChannelsSection';
import { SheetsSection } from '@/app/_docket/sheets/SheetsSection';
import styles from './FigureSections.module.css';
import { SectionPlaces } from './SectionPlaces';

/** In the order of the docket. */
const sections = [
  ['sheets', SheetsSection],
  ['cost-sheet', CostSection],
  ['prices', PricesSection],
  ['curve', CurveSection],
  ['levers', LeverSection],
] as const;

/** The sections of a docket that show what the sums came to: sheets, costs, prices, the curve, what would raise it, and selling. */
export function FigureSections() {
  const drawn = useInTurn(sections.length + 1);
  return (
    <>
      {sections.map(([id, Section], index) =>
        index < drawn ? <Section key={id} /> : <SectionPlaces key={id} of={[id]} />,
      )}
      {/* Two short answers side by side; what is unfolded in one has the whole width. */}
      <div className={styles.pair}>
        {drawn > sections.length ? (
          <>
            <ChargeSection />
            <ChannelsSection />
          </>
        ) : (
          <SectionPlaces of={['charges', 'channels']} />
        )}
      </div>
    </>
  );
}
