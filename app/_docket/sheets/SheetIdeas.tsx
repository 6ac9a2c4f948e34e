'use client';

import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import type { SheetsAnswer } from '@/lib/studies/sheets/sheetsAnswer';
import type { JobInput } from '@/shared/schemas/request';
import type { SheetIdea } from './bestIdea';
import { SheetIdeaRow } from './SheetIdeaRow';
import styles from './SheetIdeas.module.css';

type SheetIdeasProps = Readonly<{
  answer: SheetsAnswer;
  /** What it is the answer to, which may be older than what is shown. */
  answerTo: JobInput;
  /** Those that do not stand open already. */
  ideas: readonly SheetIdea[];
  stale: boolean;
}>;

/** Quantities that just fill a sheet, and what else uses the paper better. */
export function SheetIdeas({ answer, answerTo, ideas, stale }: SheetIdeasProps) {
  const formatter = formatterFor(useTextContext());
  const { jobId, workspace, costs } = useJob();
  const { quantities } = answer;
  const asked = answerTo.job.lines
    .flatMap((line) => line.quantities)
    .reduce((sum, { quantity }) => sum + quantity, 0);
  const isTogether = costs.madeOf.job.gang === 'together';
  return (
    <ul className={styles.list}>
      {quantities.map(({ n, addedCost }) => (
        <li className={styles.idea} key={n}>
          <p>
            {formatter.count(n, 'piece')} just fill a sheet: {formatter.number(n - asked, 0)} more add{' '}
            {formatter.money(addedCost)} to the cost of the whole job.
          </p>
        </li>
      ))}
      {quantities.length === 0 && <li>No larger quantity near this one fills a sheet better.</li>}
      {ideas.map((of) => (
        <li
          className={styles.idea}
          key={of.kind === 'together' ? of.kind : `${of.idea.placementId} ${of.idea.to.widthMm}`}
        >
          <SheetIdeaRow {...{ of, stale }} />
        </li>
      ))}
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
    </ul>
  );
}
