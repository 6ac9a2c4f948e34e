'use client';

import { ChargeSection } from '@/app/_docket/charges/ChargeSection';
import type { SectionProps } from '@/app/_docket/common/sectionProps';
import { CostSection } from '@/app/_docket/costs/CostSection';
import { CurveSection } from '@/app/_docket/curve/CurveSection';
import { LeverSection } from '@/app/_docket/levers/LeverSection';
import { PricesSection } from '@/app/_docket/prices/PricesSection';
import { ChannelsSection } from '@/app/_docket/selling/ChannelsSection';
import { SheetsSection } from '@/app/_docket/sheets/SheetsSection';

type FigureSectionsProps = Readonly<{
  /** The job as it was last costed. */
  costs: SectionProps;
  /** The job as it last had prices. */
  prices: SectionProps;
}>;

/** The sections of a docket that show what the sums came to: sheets, costs, prices, the curve, what would raise it, and selling. */
export function FigureSections({ costs, prices }: FigureSectionsProps) {
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
