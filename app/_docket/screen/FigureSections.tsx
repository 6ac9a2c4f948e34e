'use client';

import { ChargeSection } from '@/app/_docket/charges/ChargeSection';
import type { DocketPart } from '@/app/_docket/common/sectionProps';
import { CostSection } from '@/app/_docket/costs/CostSection';
import { CurveSection } from '@/app/_docket/curve/CurveSection';
import { LeverSection } from '@/app/_docket/levers/LeverSection';
import { PricesSection } from '@/app/_docket/prices/PricesSection';
import { ChannelsSection } from '@/app/_docket/selling/ChannelsSection';
import { SheetsSection } from '@/app/_docket/sheets/SheetsSection';

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
