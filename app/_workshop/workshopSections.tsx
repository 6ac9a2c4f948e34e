'use client';

import type { ReactNode } from 'react';
import { ChannelSection } from './ChannelSection';
import { ChargesSection } from './ChargesSection';
import { CopySection } from './CopySection';
import { HoursSection } from './HoursSection';
import { InkSection } from './InkSection';
import { OwnRowsSection } from './OwnRowsSection';
import { PackagingSection } from './PackagingSection';
import { PolicySection } from './PolicySection';
import { PowerSection } from './PowerSection';
import { PressSection } from './PressSection';
import { PrinterSection } from './PrinterSection';
import { RateLines } from './RateLines';
import { HomeSection } from './RegionSection';
import { RoomSection } from './RoomSection';
import { SheetSection } from './SheetSection';
import styles from './WorkshopParts.module.css';
import type { WorkshopDesk } from './workshopForm';

interface WorkshopSection {
  readonly id: string;
  readonly heading: string;
  readonly line: string;
  readonly body: (desk: WorkshopDesk) => ReactNode;
}

/** The parts of the workshop, in the order in which they move a price. */
export const workshopSections: readonly WorkshopSection[] = [
  {
    id: 'pay',
    heading: 'Your pay and the house',
    line: 'what your hours cost',
    body: (desk) => <RateLines desk={desk} groups={['pay', 'house']} />,
  },
  {
    id: 'minutes',
    heading: 'Minutes',
    line: 'around the press, not at it',
    body: (desk) => <RateLines desk={desk} groups={['minutes']} />,
  },
  {
    id: 'prices',
    heading: 'Prices',
    line: 'margin, breaks, endings',
    body: (desk) => <PolicySection desk={desk} />,
  },
  {
    id: 'charges',
    heading: 'Charges around the piece',
    line: 'small orders, names, rush',
    body: (desk) => <ChargesSection desk={desk} />,
  },
  {
    id: 'selling',
    heading: 'Ways of selling',
    line: 'tax and fees',
    body: (desk) => <ChannelSection desk={desk} />,
  },
  {
    id: 'ink',
    heading: 'Ink',
    line: 'what a print drinks',
    body: (desk) => <InkSection desk={desk} />,
  },
  {
    id: 'spoilage',
    heading: 'Spoilage',
    line: 'what goes wrong in good running',
    body: (desk) => <RateLines desk={desk} groups={['spoilage']} />,
  },
  { id: 'sheets', heading: 'Sheets', line: 'transfer paper', body: (desk) => <SheetSection desk={desk} /> },
  {
    id: 'printers',
    heading: 'Printers',
    line: 'power, wear, margins',
    body: (desk) => <PrinterSection desk={desk} />,
  },
  {
    id: 'presses',
    heading: 'Presses',
    line: 'heat, minutes, wear',
    body: (desk) => <PressSection desk={desk} />,
  },
  {
    id: 'packing',
    heading: 'Packing and delivery',
    line: 'orders and pieces',
    body: (desk) => <PackingSection desk={desk} />,
  },
  {
    id: 'own-rows',
    heading: 'Own rows',
    line: 'costs of yours in every job',
    body: (desk) => <OwnRowsSection desk={desk} />,
  },
  {
    id: 'power',
    heading: 'Electricity',
    line: 'tariff and circuit',
    body: (desk) => <PowerSection desk={desk} />,
  },
  { id: 'room', heading: 'The room', line: 'heat and fumes', body: (desk) => <RoomSection desk={desk} /> },
  {
    id: 'hours',
    heading: 'Free hours',
    line: 'when you can work',
    body: (desk) => <HoursSection desk={desk} />,
  },
  {
    id: 'home',
    heading: 'Name, money and units',
    line: 'how you read numbers',
    body: (desk) => <HomeSection desk={desk} />,
  },
  {
    id: 'copy',
    heading: 'Your copy',
    line: 'all of it stays yours',
    body: (desk) => <CopySection desk={desk} />,
  },
];

// Helpers

function PackingSection({ desk }: Readonly<{ desk: WorkshopDesk }>) {
  return (
    <>
      <RateLines desk={desk} groups={['packing']} />
      <h3 className={styles.sub}>Packaging of single pieces</h3>
      <PackagingSection desk={desk} />
    </>
  );
}
