'use client';

import type { ReactNode } from 'react';
import { ChargesSection } from './ChargesSection';
import { CopySection } from './CopySection';
import { HabitsSection } from './HabitsSection';
import { HoursSection } from './hours/HoursSection';
import { FetchedFields } from './ink/FetchedFields';
import { InkSection } from './ink/InkSection';
import { laterParts } from './laterParts';
import { ChannelSection } from './machines/ChannelSection';
import { PackagingSection } from './machines/PackagingSection';
import { PressSection } from './machines/PressSection';
import { PrinterSection } from './machines/PrinterSection';
import { SheetSection } from './machines/SheetSection';
import { PolicySection } from './PolicySection';
import { PowerSection } from './PowerSection';
import { RateLines } from './RateLines';
import { RegionSection } from './RegionSection';
import { RoomSection } from './RoomSection';
import { ThisDevice } from './ThisDevice';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

interface WorkshopSection {
  readonly id: string;
  readonly heading: string;
  readonly line: string;
  readonly body: (fields: WorkshopFields) => ReactNode;
}

/** The parts of the workshop, in the order in which they move a price. */
export const workshopSections: readonly WorkshopSection[] = [
  {
    id: 'pay',
    heading: 'Your pay and the house',
    line: 'what your hours cost',
    body: (fields) => <RateLines fields={fields} groups={['pay', 'house']} />,
  },
  {
    id: 'minutes',
    heading: 'Minutes',
    line: 'around the press, not at it',
    body: (fields) => <RateLines fields={fields} groups={['minutes']} />,
  },
  {
    id: 'prices',
    heading: 'Prices',
    line: 'margin, breaks, endings',
    body: (fields) => <PolicySection fields={fields} />,
  },
  {
    id: 'charges',
    heading: 'Charges around the piece',
    line: 'small orders, names, rush',
    body: (fields) => <ChargesSection fields={fields} />,
  },
  {
    id: 'selling',
    heading: 'Ways of selling',
    line: 'tax and fees',
    body: (fields) => <ChannelSection fields={fields} />,
  },
  {
    id: 'ink',
    heading: 'Ink',
    line: 'what a print drinks',
    body: (fields) => <InkSection fields={fields} />,
  },
  {
    id: 'spoilage',
    heading: 'Spoilage',
    line: 'what goes wrong in good running',
    body: (fields) => <RateLines fields={fields} groups={['spoilage']} />,
  },
  {
    id: 'sheets',
    heading: 'Sheets',
    line: 'transfer paper',
    body: (fields) => <SheetSection fields={fields} />,
  },
  {
    id: 'printers',
    heading: 'Printers',
    line: 'power, wear, margins',
    body: (fields) => <PrinterSection fields={fields} />,
  },
  {
    id: 'presses',
    heading: 'Presses',
    line: 'heat, minutes, wear',
    body: (fields) => <PressSection fields={fields} />,
  },
  {
    id: 'packing',
    heading: 'Packing and delivery',
    line: 'orders and pieces',
    body: (fields) => <PackingSection fields={fields} />,
  },
  {
    id: 'own-rows',
    heading: 'Own rows',
    line: 'costs of yours in every job',
    body: (fields) => (
      <FetchedFields part={laterParts.ownRows} what="The part with your own rows" fields={fields} />
    ),
  },
  {
    id: 'power',
    heading: 'Electricity',
    line: 'tariff and circuit',
    body: (fields) => <PowerSection fields={fields} />,
  },
  {
    id: 'room',
    heading: 'The room',
    line: 'heat and fumes',
    body: (fields) => <RoomSection fields={fields} />,
  },
  {
    id: 'habits',
    heading: 'How you work',
    line: 'asked once, for all jobs',
    body: (fields) => <HabitsSection fields={fields} />,
  },
  {
    id: 'hours',
    heading: 'Free hours',
    line: 'when you can work',
    body: (fields) => <HoursSection fields={fields} />,
  },
  {
    id: 'seller',
    heading: 'Who you are',
    line: 'at the head of every paper',
    body: (fields) => (
      <FetchedFields part={laterParts.seller} what="The part with your name" fields={fields} />
    ),
  },
  {
    id: 'papers',
    heading: 'Papers',
    line: 'their page, their words, your terms',
    body: (fields) => (
      <FetchedFields part={laterParts.papers} what="The part with the words" fields={fields} />
    ),
  },
  {
    id: 'quoting',
    heading: 'Quoting',
    line: 'what holds unless an order says otherwise',
    body: (fields) => (
      <FetchedFields part={laterParts.quoting} what="The part with the habits" fields={fields} />
    ),
  },
  {
    id: 'home',
    heading: 'Name, money and units',
    line: 'how you read numbers',
    body: (fields) => <RegionSection fields={fields} />,
  },
  {
    id: 'copies',
    heading: 'Copies',
    line: 'all of it stays yours',
    body: (fields) => <CopySection fields={fields} />,
  },
  {
    id: 'device',
    heading: 'This device',
    line: 'its name, its letter',
    body: ({ workspace: { device, clockBehind } }) => (
      <ThisDevice letter={device?.letter ?? null} clockBehind={clockBehind} />
    ),
  },
];

// Helpers

function PackingSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  return (
    <>
      <RateLines fields={fields} groups={['packing']} />
      <h3 className={styles.sub}>Packaging of single pieces</h3>
      <PackagingSection fields={fields} />
    </>
  );
}
