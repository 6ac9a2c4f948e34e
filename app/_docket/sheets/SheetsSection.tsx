'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import { casesKey } from '@/app/_trace/casesKey';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { wholeJob } from '@/lib/grid/costSheet';
import { rollUsed } from '@/lib/grid/rollUsed';
import { apartSheets } from '@/lib/layout/apartSheets';
import { formatNumber } from '@/shared/formatNumber';
import { InkNote } from './InkNote';
import { PrintOnSheet } from './PrintOnSheet';
import { RunFigures } from './RunFigures';
import { SheetChoices } from './SheetChoices';
import { SheetCount } from './SheetCount';
import { SheetIdeas } from './SheetIdeas';
import { SheetsFile } from './SheetsFile';
import styles from './SheetsSection.module.css';
import { useSheetPreviews } from './useSheetPreviews';

/** Section 3: how the prints lie on the paper, on which paper they cost least, and the file to print. */
export function SheetsSection() {
  const { answer, madeOf, stale } = useJob().costs;
  const { locale } = useTextContext();
  const { job, workshop } = madeOf;
  const paper = workshop.sheets.find(({ id }) => id === job.sheetId);
  const printer = workshop.printers.find(({ id }) => id === job.printerId);
  const layout = answer?.layout ?? null;
  const costs = answer?.costSheet ?? null;
  const { newest, failure } = useStudy('sheets', costs === null ? null : madeOf, null);
  const previews = useSheetPreviews(madeOf);
  // Figures of an older state of the job stay in view until the new ones come, but never its drawings.
  const sheets = newest?.answer ?? null;
  const isCurrent = newest?.input === madeOf;
  const ready = layout !== null && costs !== null && paper !== undefined;
  const used = ready ? rollUsed(costs, paper) : null;
  const placements = job.lines.flatMap((line) => line.placements);
  const mirrored = placements.every(({ mirror }) => mirror) ? ', mirrored' : '';
  const line = ready
    ? `${paper.name}, about ${used === null ? formatNumber(wholeJob(costs, 'sheets'), locale, { maxDecimals: 0 }) : `${formatNumber(used.lengthMm / 1000, locale, { maxDecimals: 1 })} m`} in all${mirrored}`
    : undefined;
  const marginMm = printer?.marginMm ?? 0;
  const drawn = sheets !== null && isCurrent ? sheets.plan.sheets : apartSheets(layout ?? []);
  return (
    <CardSection numeral={3} heading="Sheets" answer={line} id="sheets">
      {!ready ? (
        <NotYet what="The sheets" />
      ) : (
        <>
          {stale && <LastGood />}
          <ul className={styles.prints}>
            {drawn.map((sheet, index) => (
              <PrintOnSheet
                // biome-ignore lint/suspicious/noArrayIndexKey: sheets have no name but their place in the run
                key={index}
                sheet={sheet}
                paper={paper}
                marginMm={marginMm}
                previews={previews}
              />
            ))}
          </ul>
          <RunFigures key={casesKey(costs)} names={{ sheet: costs, input: madeOf }} />
          <InkNote sheet={costs} prints={layout} />
          <AnswerMissing what="The sheets could not be compared" failure={failure} />
          {sheets !== null && (
            <div className={styles.more}>
              <SheetCount plan={sheets.plan} used={used} newRollMm={paper.rollLengthMm} />
              <SheetsFile paper={paper} marginMm={marginMm} sheets={isCurrent ? sheets.plan.sheets : null} />
              <SheetIdeas answer={sheets} paper={paper} stale={stale || !isCurrent} />
              <SheetChoices choices={sheets.choices} stale={stale || !isCurrent} />
            </div>
          )}
        </>
      )}
    </CardSection>
  );
}
