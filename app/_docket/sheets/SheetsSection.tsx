'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useArtworkPreviews } from '@/app/_docket/common/useArtworkPreviews';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import { casesKey } from '@/app/_trace/casesKey';
import { sharedLookWords, sheetsAnswerWords } from '@/app/_words/docket/sheetWords';
import { formatterFor } from '@/app/_words/formatter';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { expectedSheets } from '@/lib/grid/expectedSheets';
import { rollUsed } from '@/lib/grid/rollUsed';
import { apartSheets, type PlannedSheet } from '@/lib/layout/apartSheets';
import type { JobInput } from '@/shared/schemas/request';
import { sheetIdeas } from './bestIdea';
import { IdeaBox } from './IdeaBox';
import { InkNote } from './InkNote';
import { PrintOnSheet } from './PrintOnSheet';
import { RunFigures } from './RunFigures';
import { SheetChoices } from './SheetChoices';
import { SheetCount } from './SheetCount';
import { SheetIdeas } from './SheetIdeas';
import { SheetKinds } from './SheetKinds';
import { SheetsFile } from './SheetsFile';
import styles from './SheetsSection.module.css';

/** Section 3: how the prints lie on the paper and what saves most of it; folded, the file to print, quantities and ink. */
export function SheetsSection() {
  const { jobId, workspace, input, failure: unpriced, costs: shown } = useJob();
  const { answer, madeOf, stale, shared } = shown;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { job, workshop } = madeOf;
  const paper = workshop.sheets.find(({ id }) => id === job.sheetId);
  const printer = workshop.printers.find(({ id }) => id === job.printerId);
  const layout = answer?.layout ?? null;
  const costs = answer?.costSheet ?? null;
  const { newest, failure } = useStudy('sheets', costs === null ? null : madeOf, null);
  const previews = useArtworkPreviews(madeOf, workspace);
  // Figures of an older state of the job stay in view until the new ones come, but never its drawings.
  const sheets = newest?.answer ?? null;
  const isCurrent = newest?.input === madeOf;
  // An idea is offered against the layout that stays, of the documents as they are.
  const isSettled = isCurrent && shared?.isLooking !== true && hasSameDocuments(madeOf, input);
  const isOld = stale || !isSettled;
  const isWaiting = !isSettled && !stale && failure === null && unpriced === null;
  const ready = layout !== null && costs !== null && paper !== undefined;
  const marginMm = printer?.marginMm ?? 0;
  const drawn =
    sheets !== null && isCurrent ? sheets.plan.sheets : (shared?.drawn ?? apartSheets(layout ?? []));
  if (!ready)
    return (
      <CardSection numeral={3} heading="Sheets" id="sheets">
        <NotYet what="The sheets" />
      </CardSection>
    );
  const used = rollUsed(costs, paper);
  const wasteShare = isCurrent ? (sheets?.plan.wasteShare ?? null) : null;
  const [best, ...others] = sheets === null ? [] : sheetIdeas(sheets);
  const pages = drawn.reduce((sum, { count }) => sum + count, 0);
  return (
    <CardSection
      numeral={3}
      heading="Sheets"
      answer={<Answer words={sheetsAnswerWords({ costs, paper, used, wasteShare, ...context }, formatter)} />}
      id="sheets"
    >
      {stale && <LastGood />}
      {shared !== null && (
        <p className={styles.look} role="status">
          {sharedLookWords(shared, formatter)}
        </p>
      )}
      <div className={styles.open}>
        <ul className={styles.prints}>
          {drawn.map((sheet, index) => (
            <PrintOnSheet
              // biome-ignore lint/suspicious/noArrayIndexKey: sheets have no name but their place in the run
              key={index}
              {...{ sheet, paper, marginMm, previews }}
              isLastOfSeveral={sheet.spare > 0 && drawn.slice(0, index).some((one) => isAlike(one, sheet))}
            />
          ))}
        </ul>
        {sheets === null && failure === null && <div className={styles.coming}>{comparing}</div>}
        {best !== undefined && (isWaiting || isCurrent) && (
          <IdeaBox idea={best} isWaiting={isWaiting} stale={isOld} />
        )}
      </div>
      <AnswerMissing what="The sheets could not be compared" failure={failure} />
      <FoldRow
        place={jobId}
        folds={[
          {
            id: 'sheets-file',
            name: `Sheets to print, ${formatter.number(pages, 0)} for the good pieces`,
            body: () => (
              <div className={styles.fold}>
                {sheets !== null &&
                  (isCurrent ? (
                    <SheetCount
                      plan={sheets.plan}
                      expected={expectedSheets(costs)}
                      used={used}
                      newRollMm={paper.rollLengthMm}
                    />
                  ) : (
                    comparing
                  ))}
                <SheetKinds sheets={drawn} paper={paper} />
                <SheetsFile
                  paper={paper}
                  sheets={sheets !== null && isCurrent ? drawn : null}
                  hasFailed={failure !== null}
                />
              </div>
            ),
          },
          {
            id: 'sheets-quantities',
            name: 'Quantities that fill a sheet',
            body: () =>
              newest === null ? (
                comparing
              ) : (
                <SheetIdeas answer={newest.answer} answerTo={newest.input} ideas={others} stale={isOld} />
              ),
          },
          {
            id: 'sheets-papers',
            name: 'Other papers',
            body: () =>
              sheets === null ? comparing : <SheetChoices choices={sheets.choices} stale={isOld} />,
          },
          {
            id: 'sheets-ink',
            name: 'Ink and presses',
            body: () => (
              <div className={styles.fold}>
                <RunFigures key={casesKey(costs)} names={{ sheet: costs, input: madeOf }} />
                <InkNote sheet={costs} prints={layout} />
              </div>
            ),
          },
        ]}
      />
    </CardSection>
  );
}

// Helpers

const comparing = <p>The sheets are being compared.</p>;

const hasSameDocuments = (one: JobInput, other: JobInput): boolean =>
  one.job === other.job &&
  one.workshop === other.workshop &&
  one.blanks === other.blanks &&
  one.artworks === other.artworks;

const isAlike = ({ pieces: [one] }: PlannedSheet, { pieces: [other] }: PlannedSheet): boolean =>
  one !== undefined &&
  one.lineId === other?.lineId &&
  one.placementId === other.placementId &&
  one.print === other.print;
