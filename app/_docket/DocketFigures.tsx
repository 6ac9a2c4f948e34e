'use client';

import { ChannelsSection } from './ChannelsSection';
import { ChargeSection } from './ChargeSection';
import { CostSection } from './CostSection';
import { CurveSection } from './CurveSection';
import type { DocketPart } from './docketPart';
import { LeverSection } from './LeverSection';
import { PricesSection } from './PricesSection';
import { SheetsSection } from './SheetsSection';

type DocketFiguresProps = Readonly<{
  /** The job as it was last costed. */
  costs: DocketPart;
  /** The job as it last had prices. */
  prices: DocketPart;
}>;

/** The sections of a docket that show what the sums came to: sheets, costs, prices, the curve, what would raise it, and selling. */
export function DocketFigures({ costs, prices }: DocketFiguresProps) {
  return (
    <>
      <SheetsSection {...costs} />
      <CostSection {...costs} />
      <PricesSection {...prices} />
      <CurveSection {...prices} />
      <LeverSection {...prices} />
      <ChargeSection {...prices} />
      <ChannelsSection {...prices} />
    </>
  );
}
