'use client';

import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import type { SheetsAnswer } from '@/lib/studies/sheets/sheetsAnswer';
import type { Sheet } from '@/shared/schemas/workshop';
import styles from './SheetIdeas.module.css';
import { namedPrint } from './sheetNames';

type SheetIdeasProps = Readonly<{
  answer: SheetsAnswer;
  paper: Sheet;
  stale: boolean;
}>;

/** Small changes that use the paper better, each costed by the whole job. */
export function SheetIdeas({ answer, paper, stale }: SheetIdeasProps) {
  const formatter = formatterFor(useTextContext());
  const { jobId, workspace, costs } = useJob();
  const { madeOf } = costs;
  const { smaller, together, quantities } = answer;
  const asked = madeOf.job.lines
    .flatMap((line) => line.quantities)
    .reduce((sum, { quantity }) => sum + quantity, 0);
  const blockedBy = stale ? 'The job has changed; its sheets are being laid out anew.' : undefined;
  const isTogether = madeOf.job.gang === 'together';
  if (smaller.length + quantities.length === 0 && together === null && !isTogether) return null;
  return (
    <section className={styles.ideas} aria-labelledby="sheet-ideas">
      <h3 id="sheet-ideas">Using the paper better</h3>
      <ul className={styles.list}>
        {smaller.map((idea) => {
          const { name } = namedPrint(madeOf, { ...idea, print: 0 });
          const label = `Print ${name} at ${formatter.size(idea.to.widthMm, idea.to.heightMm)}`;
          return (
            <li className={styles.idea} key={`${idea.lineId} ${idea.placementId} ${idea.to.widthMm}`}>
              <p>
                {formatter.length(idea.from.widthMm - idea.to.widthMm)} narrower, {name} goes{' '}
                {formatter.number(idea.perSheet, 0)} to a sheet instead of{' '}
                {formatter.number(idea.perSheetNow, 0)}: {formatter.count(idea.sheetsLess, 'sheet')} and{' '}
                {formatter.money(idea.saved)} saved.
              </p>
              <Button
                blockedBy={blockedBy}
                onPress={() => void workspace.applyFix(jobId, label, idea.changes)}
              >
                {label}
              </Button>
            </li>
          );
        })}
        {together !== null && (
          <li className={styles.idea}>
            <p>
              {together.rollLessMm === null
                ? `With different prints on one sheet: ${formatter.count(together.sheetsLess, 'sheet')}`
                : `With different prints side by side: ${formatter.number(together.rollLessMm / 1000, 2)} m of roll`}{' '}
              and {formatter.money(together.saved)} saved.
            </p>
            <Button
              blockedBy={blockedBy}
              onPress={() =>
                void workspace.setField(
                  { kind: 'job', id: jobId },
                  'Prints share sheets',
                  ['gang'],
                  'together',
                )
              }
            >
              Let prints share sheets
            </Button>
          </li>
        )}
        {isTogether && (
          <li className={styles.idea}>
            <p>Different prints may lie on one sheet; each bears its share of the paper by area.</p>
            <Button
              onPress={() =>
                void workspace.setField(
                  { kind: 'job', id: jobId },
                  'Prints each by themselves',
                  ['gang'],
                  'apart',
                )
              }
            >
              Lay each print out by itself
            </Button>
          </li>
        )}
        {quantities.map(({ n, addedCost }) => (
          <li className={styles.idea} key={n}>
            <p>
              {formatter.count(n, 'piece')} just fill the last <bdi>{paper.name}</bdi>:{' '}
              {formatter.number(n - asked, 0)} more add {formatter.money(addedCost)} to the cost of the whole
              job.
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
