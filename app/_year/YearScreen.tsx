'use client';

import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Card } from '@/app/_controls/Card';
import { PageHead } from '@/app/_controls/PageHead';
import { ClockBehind } from '@/app/_keeping/ClockBehind';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { PartMissing } from '@/app/_network/PartMissing';
import { formatterFor } from '@/app/_words/formatter';
import { usableLocale } from '@/app/_words/usableLocale';
import { yearName, yearWait } from '@/app/_words/year/yearNames';
import { yearOfDay } from '@/lib/year/yearSpan';
import { EntriesSection } from './EntriesSection';
import { HoursSection } from './HoursSection';
import { MoneySections } from './MoneySections';
import { OverheadSection } from './OverheadSection';
import { PaySection } from './PaySection';
import { ResultsSection } from './ResultsSection';
import { useYear } from './useYear';
import { WorthSection } from './WorthSection';
import { YearFields } from './YearFields';
import type { YearSection } from './yearSection';
import { yearSetting } from './yearSetting';

/** What a year came to: the pay of its hour, and all that it is made of. */
export function YearScreen() {
  return <WithWorkspace>{(workspace) => <Year workspace={workspace} />}</WithWorkspace>;
}

// Helpers

/** Whatever a year is told by: one of them that cannot be read is missing in its sums. */
const YEAR_KINDS: ReadonlySet<string> = new Set([
  ...['expense', 'hours', 'payment', 'payout', 'goodsIn', 'faultClaim', 'shopPayment', 'shopStatement'],
  ...['stockMove', 'stockTransfer', 'stockCount', 'runStep', 'pressing', 'sheetsPrinted', 'takeBack'],
  ...['dayClose', 'stallPlan', 'runStandard', 'quote', 'invoice', 'credit'],
]);

function Year({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const today = useToday();
  const [firstMonth, setFirstMonth] = useState(yearSetting.firstMonth);
  const [chosen, setChosen] = useState<number | null>(null);
  const year = chosen ?? yearOfDay(today, firstMonth);
  const { standing, years, book, sums } = useYear(workspace, year, firstMonth);
  const formatter = formatterFor(workspace.workshop);
  const locale = usableLocale(workspace.workshop.locale);
  const name = yearName(year, firstMonth, locale);
  return (
    <>
      <PageHead title="Year" line={`${name}: what came, what went, and what an hour brought.`} />
      <ClockBehind clockBehind={workspace.clockBehind} />
      <UnreadableRecords workspace={workspace} level={2} of={YEAR_KINDS} />
      <YearFields
        {...{ year, years, firstMonth, locale }}
        onYear={setChosen}
        onFirstMonth={(month) => {
          yearSetting.keepFirstMonth(month);
          setFirstMonth(month);
          setChosen(null);
        }}
      />
      {sums.kind === 'missing' && <PartMissing what="The sums of the year" missing={sums} />}
      {standing === null && sums.kind !== 'missing' && <p role="status">{yearWait}</p>}
      {standing !== null && (
        <YearCard on={{ workspace, book, standing, today, formatter, locale }} name={name} />
      )}
    </>
  );
}

const YearCard = ({ on, name }: Readonly<{ on: YearSection; name: string }>) => (
  <Card>
    <PaySection on={on} />
    <EntriesSection on={on} name={name} />
    <MoneySections on={on} />
    <WorthSection on={on} />
    <OverheadSection on={on} />
    <HoursSection on={on} />
    <ResultsSection on={on} />
  </Card>
);
