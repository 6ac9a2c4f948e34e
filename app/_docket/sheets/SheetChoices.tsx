'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { findingWords } from '@/app/_words/findings/findingWords';
import { formatterFor } from '@/app/_words/formatter';
import type { SheetChoice } from '@/lib/studies/sheets/compareSheets';
import styles from './SheetChoices.module.css';

type SheetChoicesProps = Readonly<{
  choices: readonly SheetChoice[];
  /** Figures of an older state of the job are not to be acted on. */
  stale: boolean;
}>;

/** The maker's sheets beside each other: sheets needed, paper left over, cost of a good piece; one tap changes. */
export function SheetChoices({ choices, stale }: SheetChoicesProps) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { jobId, workspace, costs } = useJob();
  const { sheets } = costs.madeOf.workshop;
  if (choices.length < 2) {
    return (
      <p className={styles.quiet}>
        <Link href="/workshop#sheets">Add another sheet to the workshop</Link>, and the job is costed on it
        too.
      </p>
    );
  }
  return (
    <section className={styles.choices} aria-labelledby="sheet-choices">
      <h3 className="visuallyHidden" id="sheet-choices">
        On your other sheets
      </h3>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Sheet</th>
            <th scope="col">Sheets</th>
            <th scope="col">Left over</th>
            <th scope="col">A good piece costs</th>
            <th scope="col">
              <span className="visuallyHidden">Change</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {choices.map((choice) => {
            const sheet = sheets.find(({ id }) => id === choice.sheetId);
            const name = sheet?.name ?? 'A sheet that was removed';
            return (
              <tr key={choice.sheetId} className={choice.isPresent ? styles.present : undefined}>
                <th scope="row" id={nameId(choice)} tabIndex={-1}>
                  <span className={styles.name}>{name}</span>
                  {sheet && (
                    <span className={styles.size}>
                      {sheet.form === 'roll'
                        ? `${formatter.length(sheet.widthMm)} wide`
                        : formatter.size(sheet.widthMm, sheet.heightMm)}
                    </span>
                  )}
                </th>
                {choice.kind === 'costed' ? (
                  <>
                    <td data-name="Sheets">
                      {choice.rollLengthMm === null
                        ? formatter.number(choice.sheets, 0)
                        : `${formatter.number(choice.rollLengthMm / 1000, 2)} m`}
                    </td>
                    <td data-name="Left over">{formatter.share(choice.wasteShare)}</td>
                    <td data-name="A good piece costs">{formatter.money(choice.costEach)}</td>
                  </>
                ) : (
                  <td colSpan={3} className={styles.why}>
                    {choice.why === null
                      ? 'Its sums give no number.'
                      : findingWords(choice.why, context).sentence}
                  </td>
                )}
                <td className={styles.action}>
                  {choice.isPresent ? (
                    <span className={styles.mark}>this job’s sheet</span>
                  ) : (
                    choice.kind === 'costed' && (
                      <Button
                        blockedBy={
                          stale ? 'The job has changed; its sheets are being compared anew.' : undefined
                        }
                        onPress={() => {
                          // The button goes once this is the job’s sheet; its name stays.
                          focusById(nameId(choice));
                          void workspace.setField(
                            { kind: 'job', id: jobId },
                            'Sheet',
                            ['sheetId'],
                            choice.sheetId,
                          );
                        }}
                      >
                        Use {name}
                      </Button>
                    )
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

// Helpers

const nameId = ({ sheetId }: SheetChoice): string => `sheet-choice-${sheetId}`;
