'use client';

import { useMemo } from 'react';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { inkRecordOf } from '@/lib/ink/record/inkRecordOf';
import { readInkRecord } from '@/lib/ink/record/readInkRecord';
import { rateInUnit } from '@/lib/job/rateInUnit';
import { rateDefinition } from '@/shared/tables/rateCatalogue';
import { InkEntries } from './InkEntries';
import { InkRefillForm } from './InkRefillForm';
import { InkRunForm } from './InkRunForm';
import { InkTold } from './InkTold';

/** What was poured in and printed, what it tells, and where more is noted. */
export function InkRecord({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, workspace } = fields;
  const { rates } = workshop;
  const { inkRefill, inkPrints } = workspace.entries;
  const record = useMemo(() => inkRecordOf({ inkRefill, inkPrints }), [inkRefill, inkPrints]);
  const printDays = useMemo(() => new Set(record.runs.map(({ day }) => day)), [record]);
  const loss = rates.inkLoss?.value ?? rateDefinition('inkLoss').typical;
  const sessionMl =
    rates.sessionInk === null ? rateDefinition('sessionInk').typical : rateInUnit(rates.sessionInk, 'mL');
  const reading = useMemo(() => readInkRecord(record, { loss, sessionMl }), [record, loss, sessionMl]);
  return (
    <>
      <InkTold fields={fields} reading={reading} isEmpty={record.refills.length + record.runs.length === 0} />
      <InkRefillForm fields={fields} printDays={printDays} />
      <InkRunForm fields={fields} />
      <InkEntries {...{ fields, record, reading, printDays }} />
    </>
  );
}
