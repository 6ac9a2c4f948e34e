'use client';

import { ChargeSection } from '@/app/_docket/charges/ChargeSection';
import { CostSection } from '@/app/_docket/costs/CostSection';
import { CurveSection } from '@/app/_docket/curve/CurveSection';
import { LeverSection } from '@/app/_docket/levers/LeverSection';
import { PricesSection } from '@/app/_docket/prices/PricesSection';
import { ChannelsSection } from '@/app/_docket/selling/ChannelsSection';
import { SheetsSection } from '@/app/_docket/sheets/SheetsSection';
import styles from './FigureSections.module.css';

/** The sections of a docket that show what the sums came to: sheets, costs, prices, the curve, what would raise it, and selling. */
export function FigureSections() {
  return (
    <>
      <SheetsSection />
      <CostSection />
      <PricesSection />
      <CurveSection />
      <LeverSection />
      {/* Two short answers side by side; what is unfolded in one has the whole width. */}
      <div className={styles.pair}>
        <ChargeSection />
        <ChannelsSection />
      </div>
    </>
  );
}
