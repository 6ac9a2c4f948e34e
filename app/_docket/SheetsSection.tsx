'use client';

import { wholeJob } from '@/lib/grid/costSheet';
import { formatNumber } from '@/shared/formatNumber';
import { useTextContext } from '../_fields/useTextContext';
import { DocketSection } from '../_figures/DocketSection';
import { casesKey } from '../_trace/casesKey';
import type { DocketPart } from './docketPart';
import { LastGood } from './LastGood';
import { NotYet } from './NotYet';
import { PrintOnSheet } from './PrintOnSheet';
import { RunFigures } from './RunFigures';
import styles from './SheetsSection.module.css';

/** Section 3: how the prints lie on the paper, and what the run takes in ink, power and presses. */
export function SheetsSection(part: DocketPart) {
  const { answer, madeOf, stale } = part;
  const { locale } = useTextContext();
  const { job, workshop } = madeOf;
  const paper = workshop.sheets.find(({ id }) => id === job.sheetId);
  const printer = workshop.printers.find(({ id }) => id === job.printerId);
  const layout = answer?.layout ?? null;
  const sheet = answer?.costSheet ?? null;
  const ready = layout !== null && sheet !== null && paper !== undefined;
  const placements = job.lines.flatMap((line) => line.placements);
  const mirrored = placements.every(({ mirror }) => mirror) ? ', mirrored' : '';
  const line = ready
    ? `${paper.name}, about ${formatNumber(wholeJob(sheet, 'sheets'), locale, { maxDecimals: 0 })} in all${mirrored}`
    : undefined;
  return (
    <DocketSection numeral={3} heading="Sheets" line={line} id="sheets">
      {!ready ? (
        <NotYet what="The sheets" />
      ) : (
        <>
          {stale && <LastGood />}
          <ul className={styles.prints}>
            {layout.map((print) => (
              <PrintOnSheet
                key={`${print.lineId} ${print.placementId} ${print.print}`}
                print={print}
                paper={paper}
                marginMm={printer?.marginMm ?? 0}
                input={madeOf}
              />
            ))}
          </ul>
          <RunFigures key={casesKey(sheet)} names={{ sheet, input: madeOf }} />
        </>
      )}
    </DocketSection>
  );
}
